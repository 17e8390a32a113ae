/** What a key means in German, by its English. */
export const germanNotes: Readonly<Record<string, string>> = {
  "Name of the rig, as page and card have it.": "Name der Montage, wie ihn Seite und Karte haben.",
  "What the rig is for, in one sentence.": "Wozu die Montage ist, in einem Satz.",
  "still for lakes, ponds and slow canals; flowing for streams and rivers.":
    "still für Seen, Teiche und langsame Kanäle; flowing für Bäche und Flüsse.",
  "The float, by the name of its file below floats/.": "Die Pose, mit dem Namen ihrer Datei unter floats/.",
  "Line from the reel to the hook length.": "Schnur von der Rolle bis zum Vorfach.",
  "What it breaks at.": "Wobei sie reißt.",
  "How thick it is; stands on the spool.": "Wie dick sie ist; es steht auf der Spule.",
  "Finer line that the hook is tied to, so that a snag costs little.":
    "Feinere Schnur, an der der Haken hängt, damit ein Hänger wenig kostet.",
  "What it breaks at: less than the main line.": "Wobei sie reißt: bei weniger als die Hauptschnur.",
  "How thick it is.": "Wie dick sie ist.",
  "From its loop to the bend of the hook.": "Von seiner Schlaufe bis zum Hakenbogen.",
  "Size of hook, a number of hooks.yaml; the larger the number, the smaller the hook.":
    "Hakengröße, eine Nummer aus hooks.yaml; je größer die Nummer, desto kleiner der Haken.",
  "Bait on the hook, by the name of its file below baits/.":
    "Köder am Haken, mit dem Namen seiner Datei unter baits/.",
  "What is thrown in, how much and how often.": "Was eingeworfen wird, wie viel und wie oft.",
  "What is thrown in.": "Was eingeworfen wird.",
  "How much at a time.": "Wie viel auf einmal.",
  "How long from one to the next.": "Wie lange von einem zum nächsten Mal.",
  "How long a session is; four hours where nothing is said.":
    "Wie lange gefischt wird; vier Stunden, wo nichts steht.",
  "How to throw it, in a sentence.": "Wie man es wirft, in einem Satz.",
  "true where each portion is a ball of groundbait.": "true, wenn jede Gabe ein Ballen Grundfutter ist.",
  "How the bait lies to the bed: dead depth touches it, over depth has line on it, off bottom and up in the water hang above it.":
    "Wie der Köder zum Grund liegt: dead depth berührt ihn, bei over depth liegt Schnur auf ihm, bei off bottom und up in the water hängt er darüber.",
  "Line beyond the depth of the water; below 0 for a rig off the bottom.":
    "Schnur über die Wassertiefe hinaus; unter 0 für eine Montage über dem Grund.",
  "Depths of water that the rig is made up for; each has its own sums.":
    "Wassertiefen, für die die Montage gebaut wird; jede wird für sich gerechnet.",
  "How fast the surface runs, for flowing water: so many metres in so many seconds.":
    "Wie schnell die Oberfläche läuft, für fließendes Wasser: so viele Meter in so vielen Sekunden.",
  "Length of the whip, for a rig that is fished without a reel.":
    "Länge der Stippe, für eine Montage, die ohne Rolle gefischt wird.",
  "Share of the water's pace by which the float is held back, where that is what the rig is for.":
    "Anteil der Strömung, um den die Pose verzögert wird, wenn die Montage dafür da ist.",
  "Knots that the line's strength hangs on, by the names of their files below knots/.":
    "Knoten, an denen die Tragkraft hängt, mit den Namen ihrer Dateien unter knots/.",
  "Tub of shot for this rig alone, by the name of its file below tubs/; the guide's where nothing is said.":
    "Schrotdose nur für diese Montage, mit dem Namen ihrer Datei unter tubs/; die des Führers, wo nichts steht.",
  "Whom it is for: first for the first day, beginner after that, next for those who can.":
    "Für wen sie ist: first für den ersten Tag, beginner danach, next für alle, die es können.",
  "Fish that it is meant for, by the names that species/ and lines.yaml have.":
    "Fische, für die sie gedacht ist, mit den Namen, die species/ und lines.yaml haben.",
  "When to take this rig; one sentence a line.": "Wann man diese Montage nimmt; ein Satz je Zeile.",
  "When to take another; one sentence a line.": "Wann man eine andere nimmt; ein Satz je Zeile.",
  'What to change first when bites fail: a point for each sign, which may be several sentences, such as "If bites stop, go shallower."':
    "Was man zuerst ändert, wenn Bisse ausbleiben: ein Punkt je Zeichen, auch aus mehreren Sätzen, etwa „Hören die Bisse auf, stelle flacher.“",
  "Where the shot go. Each pattern has keys of its own; npx dotdown schema --keys lists them.":
    "Wohin die Schrote kommen. Jedes Muster hat eigene Schlüssel; npx dotdown schema --keys nennt sie, auf Englisch.",
  "How the shot are laid out on the line.": "Wie die Schrote an der Schnur verteilt sind.",
  "Least share of the load that locks the float.": "Kleinster Anteil der Last, der die Pose hält.",
  "Size of each shot down the line.": "Größe jedes Schrots an der Schnur.",
  "From one shot to the next.": "Von einem Schrot zum nächsten.",
  "The last shot, next to the hook, whose lift or stop shows in the tip.":
    "Das letzte Schrot vor dem Haken; hebt es sich oder liegt es auf, zeigt es die Spitze.",
  "Its size.": "Seine Größe.",
  "From the bend of the hook to it; a usual place where nothing is said.":
    "Vom Hakenbogen bis zu ihm; eine übliche Stelle, wo nichts steht.",
  "Name of the float.": "Name der Pose.",
  "What it is for, in one sentence.": "Wozu sie ist, in einem Satz.",
  "Kind of float; floats of one kind stand together.": "Art der Pose; Posen einer Art stehen beieinander.",
  "How it is fixed to the line: bottom, top and bottom, or sliding.":
    "Wie sie an der Schnur sitzt: unten, oben und unten, oder gleitend.",
  "What keeps it in its place: shot pinched beside it, rubbers, or a stop knot.":
    "Was sie an ihrer Stelle hält: geklemmte Schrote, Gummis oder ein Stopperknoten.",
  "Load that is marked on the float, such as 2 AAA.": "Last, die auf der Pose steht, etwa 2 AAA.",
  "Metal of the shot that the marking means; lead on most floats.":
    "Metall der Schrote, die der Aufdruck meint; bei den meisten Posen Blei.",
  "Weight built into the float, over and above the marking.":
    "Eingebautes Gewicht, über den Aufdruck hinaus.",
  "Tip above the water with the whole load on.": "Spitze über dem Wasser, mit der ganzen Last.",
  "Shape from the lower eye up: how thick it is at each height.":
    "Form von der unteren Öse aufwärts: wie dick sie in jeder Höhe ist.",
  "What the float carried when somebody tried it in water; it counts more than the marking.":
    "Was die Pose trug, als sie jemand im Wasser versucht hat; das zählt mehr als der Aufdruck.",
  "What the float itself weighs, where somebody weighed it.":
    "Was die Pose selbst wiegt, wenn sie jemand gewogen hat.",
  "Where the figures are from: published, common practice, from memory, or measured by you. Pages say so beside them.":
    "Woher die Zahlen sind: published (veröffentlicht), common practice (üblich), from memory (aus dem Gedächtnis) oder measured (von dir gemessen). Seiten sagen es dabei.",
  "What an angler should know of it, in Markdown.": "Was man als Angler von ihr wissen sollte, in Markdown.",
  "Place in the course, counted from 1; no other lesson has the same.":
    "Stelle im Kurs, von 1 an gezählt; keine andere Lektion hat dieselbe.",
  "Part of the course that it stands in.": "Teil des Kurses, in dem sie steht.",
  "Name of the lesson.": "Name der Lektion.",
  "What a reader can do after it, in one sentence.": "Was ein Leser danach kann, in einem Satz.",
  "Name of the page.": "Name der Seite.",
  "What stands on it, in one sentence.": "Was auf ihr steht, in einem Satz.",
  "Name of the bait.": "Name des Köders.",
  "What it weighs on the hook.": "Was er am Haken wiegt.",
  "Mass by volume; fresh water has 1.00 g/cm3, and what is above that sinks.":
    "Masse je Raum; Süßwasser hat 1.00 g/cm3, und was darüber ist, sinkt.",
  "How fast it sinks loose, where somebody timed it.":
    "Wie schnell er lose sinkt, wenn es jemand gestoppt hat.",
  "Hooks that suit it: the largest, then the smallest.": "Haken, die passen: der größte, dann der kleinste.",
  "What it is called where rigs feed it, such as maggots, so that both are bought as one.":
    "Wie er heißt, wo Montagen ihn füttern, etwa Maden, damit beides als eines gekauft wird.",
  "How it is drawn on its hook; without it there is no picture.":
    "Wie er am Haken gezeichnet wird; ohne das gibt es kein Bild.",
  "How to hook and keep it, in Markdown.": "Wie man ihn anködert und aufhebt, in Markdown.",
  "Name of the fish.": "Name des Fisches.",
  "Other names by which rigs say that they catch it.":
    "Andere Namen, mit denen Montagen sagen, dass sie ihn fangen.",
  "What it asks of a rig, in one sentence.": "Was er von einer Montage verlangt, in einem Satz.",
  "How it is drawn from the side; without it there is no picture. Shares are of its length from the nose to the root of the tail.":
    "Wie er von der Seite gezeichnet wird; ohne das gibt es kein Bild. Anteile sind die seiner Länge vom Maul bis zur Schwanzwurzel.",
  "Where it lives and how it bites, in Markdown.": "Wo er lebt und wie er beißt, in Markdown.",
  "Name of the knot.": "Name des Knotens.",
  "What it joins.": "Was er verbindet.",
  "Share of the line's strength that the knot keeps, from 0 to 1.":
    "Anteil der Tragkraft, den der Knoten lässt, von 0 bis 1.",
  "Width and height of each picture, in its own units.":
    "Breite und Höhe jedes Bildes, in eigenen Einheiten.",
  "Pictures in order, each with its words and the paths of its strands.":
    "Bilder der Reihe nach, jedes mit seinen Worten und den Wegen seiner Stränge.",
  "Name of the scale.": "Name der Skala.",
  "Where its figures are from.": "Woher ihre Zahlen sind.",
  "Sizes of shot, each with its weight.": "Schrotgrößen, jede mit ihrem Gewicht.",
  "Name of the tub.": "Name der Dose.",
  "Scale that its sizes are of, by the name of its file below shot/.":
    "Skala, zu der ihre Größen gehören, mit dem Namen ihrer Datei unter shot/.",
  "What is in it.": "Was in ihr ist.",
  "Name of the swim, as page and sheet have it.": "Name des Platzes, wie ihn Seite und Blatt haben.",
  "What it is, in one sentence.": "Was er ist, in einem Satz.",
  "How fast the surface ran when the depths were plumbed, for flowing water: so many metres in so many seconds.":
    "Wie schnell die Oberfläche lief, als gelotet wurde, für fließendes Wasser: so viele Meter in so vielen Sekunden.",
  "Day on which the depths were plumbed.": "Tag, an dem die Tiefen gelotet wurden.",
  "What shows how high the water stands, such as the third board of the platform.":
    "Woran man sieht, wie hoch das Wasser steht, etwa das dritte Brett des Stegs.",
  "Lines along which depths were plumbed, each from the bank out.":
    "Linien, auf denen gelotet wurde, jede vom Ufer hinaus.",
  "Places of the swim to fish at.": "Stellen des Platzes, an denen man fischt.",
  "Winds that blow on the swim, by where they come from.":
    "Winde, die auf den Platz wehen, danach, woher sie kommen.",
  "What can hurt somebody here; it stands on every sheet that is made for the swim.":
    "Was hier jemanden verletzen kann; es steht auf jedem Blatt, das für den Platz gemacht wird.",
  "How help, and whoever is dropped off, gets here.":
    "Wie Hilfe herkommt, und wer hergebracht oder abgeholt wird.",
  "Map reference of the place that help drives to.": "Koordinaten der Stelle, zu der Hilfe fährt.",
  "The nearest road, and where on it.": "Die nächste Straße, und wo an ihr.",
  "How to walk from there.": "Wie man von dort geht.",
  "How many can fish it side by side.": "Wie viele dort nebeneinander fischen können.",
  "What lives here, by the names that species/ has.": "Was hier lebt, mit den Namen, die species/ hat.",
  "Rules of the water, in whole sentences.": "Regeln des Gewässers, in ganzen Sätzen.",
  "The swim, by the name of its file below swims/.": "Der Platz, mit dem Namen seiner Datei unter swims/.",
  "Day of the session.": "Tag des Fischens.",
  "How much higher the water stood than when the swim was sounded; below 0 where it was lower.":
    "Wie viel höher das Wasser stand als beim Loten; unter 0, wenn es tiefer stand.",
  "How fast the surface ran: so many metres in so many seconds.":
    "Wie schnell die Oberfläche lief: so viele Meter in so vielen Sekunden.",
  "Depths that were found.": "Tiefen, die gefunden wurden.",
  "What each rig did. No names of people.": "Was jede Montage brachte. Keine Namen von Menschen.",
  "Name of the shop, or of its shelf.": "Name des Ladens oder seines Regals.",
  "What prices are in, such as £ or EUR.": "Worin Preise sind, etwa € oder CHF.",
  "Floats that there are.": "Posen, die da sind.",
  "Shot that there is, by size and metal.": "Schrote, die da sind, nach Größe und Metall.",
  "Hooks that there are.": "Haken, die da sind.",
  "Line for hook lengths that there is.": "Vorfachschnur, die da ist.",
  "Main line that there is.": "Hauptschnur, die da ist.",
  "What is in a made-up pack besides float and shot.":
    "Was in einem fertigen Päckchen außer Pose und Schroten ist.",
  "Rigs that are sold made up.": "Montagen, die fertig verkauft werden.",
  "Name of the session.": "Name der Stunde am Wasser.",
  "Its day.": "Ihr Tag.",
  "When it begins.": "Wann sie beginnt.",
  "How long it is, from the first minute to the last.":
    "Wie lange sie dauert, von der ersten Minute bis zur letzten.",
  "true for a page of it on the site, too. Where children meet, and when, is then public; on paper it is there in any case.":
    "true für eine Seite im Netz. Wo und wann sich Kinder treffen, ist dann öffentlich; auf Papier gibt es sie in jedem Fall.",
  "Where it is held: places of swims. Learners are shared out over them, as equally as may be.":
    "Wo sie ist: Stellen von Plätzen. Die Lernenden werden möglichst gleich auf sie verteilt.",
  "Who comes. Never write names here.": "Wer kommt. Schreibe hier nie Namen.",
  "How many grown-ups are there. How many there must be is your club's and the law's to say.":
    "Wie viele Erwachsene da sind. Wie viele es sein müssen, sagen dein Verein und das Gesetz.",
  "How many rods or whips there are.": "Wie viele Ruten oder Stippen da sind.",
  "Lessons that are held, in order, by the names of their files.":
    "Lektionen, die gehalten werden, der Reihe nach, mit den Namen ihrer Dateien.",
  "Rigs that are fished, by name; learners fish them one after the other.":
    "Montagen, die gefischt werden, mit Namen; die Lernenden fischen eine nach der anderen.",
  "Baits for the hook, by name.": "Köder für den Haken, mit Namen.",
  "How much of each bait a learner has for the hook.":
    "Wie viel von jedem Köder ein Lernender für den Haken hat.",
  "The outfit of kits/ whose `group` says what a learner uses up, how it is sold and how much is spare.":
    "Die Ausrüstung unter kits/, deren `group` sagt, was ein Lernender verbraucht, wie es verkauft wird und wie viel übrig sein soll.",
  "Time to arrive and set up.": "Zeit, um anzukommen und aufzubauen.",
  "The least time to fish besides lessons.": "Zeit, die neben Lektionen mindestens gefischt wird.",
  "Time to pack up and to see everybody off.": "Zeit, um einzupacken und alle zu verabschieden.",
  "What is in the box already, how things are sold, and what that costs.":
    "Was schon in der Kiste ist, wie es verkauft wird und was das kostet.",
  "Name of the guide.": "Name des Führers.",
  "Who gives it out.": "Wer ihn herausgibt.",
  "Where the site will be served; cards get a code for telephones with it.":
    "Wo die Seiten im Netz stehen werden; Karten bekommen damit einen Code für Telefone.",
  "Language of the guide, such as en or de-AT; it says how numbers are written, too.":
    "Sprache des Führers, etwa de oder de-AT; sie sagt auch, wie Zahlen geschrieben werden.",
  "metric first shows both systems; metric, imperial or us (feet and inches, American pints) one alone, and lengths typed in texts in it too.":
    "metric zeigt Meter und Gramm, imperial oder us (Fuß und Zoll, amerikanische Maße) nur diese, auch für Längen in Texten; metric first zeigt beides.",
  "Scale of shot, by the name of its file below shot/.":
    "Schrotskala, mit dem Namen ihrer Datei unter shot/.",
  "Tub that rigs are made up from, by the name of its file below tubs/.":
    "Dose, aus der Montagen gebaut werden, mit dem Namen ihrer Datei unter tubs/.",
  "What the law of your place says of lead shot. Look it up; it differs from place to place.":
    "Was das Gesetz deines Ortes über Bleischrote sagt. Sieh nach; es ist von Ort zu Ort anders.",
  "Place whose law it is.": "Ort, dessen Gesetz es ist.",
  "Lead shot may weigh up to this; 0 g where none is allowed.":
    "So viel dürfen Bleischrote höchstens wiegen; 0 g, wo keine erlaubt sind.",
  "Lead weights above this are allowed again, where the law says so.":
    "Über diesem Gewicht ist Blei wieder erlaubt, wo es das Gesetz sagt.",
  "Where the rule can be read.": "Wo die Regel steht.",
  "Day on which somebody last looked; without it pages say that nobody has yet.":
    "Tag, an dem zuletzt jemand nachgesehen hat; ohne ihn sagen die Seiten, dass es noch niemand getan hat.",
  "Other rules of the place, in whole sentences that texts ask for by name; the safety page asks for licence, close-season, wires and cleaning.":
    "Andere Regeln des Ortes, in ganzen Sätzen, nach denen Texte mit Namen fragen; die Seite zur Sicherheit fragt nach licence (Schein), close-season (Schonzeit), wires (Stromleitungen) und cleaning (Säubern).",
  "Whom to ring when something has happened.": "Wen man anruft, wenn etwas geschehen ist.",
  "The club's own number in an emergency, as it should be dialled.":
    "Die eigene Notfallnummer des Vereins, wie man sie wählt.",
  "Where help gets to your water, as you would tell it on the telephone: gate, road, nearest house.":
    "Wo Hilfe an dein Wasser kommt, wie du es am Telefon sagen würdest: Tor, Straße, nächstes Haus.",
  "Whether a rig against the lead rule is an error, which stops the build, or a warning.":
    "Ob eine Montage gegen die Bleiregel ein Fehler ist, der den Bau anhält, oder eine Warnung.",
  "Plummets to find the depth with.": "Lote, um die Tiefe zu finden.",
  "Usual temperature of the water.": "Übliche Wassertemperatur.",
  "Salt in the water, in grams a kilogram: 0 in fresh water, 35 in the open sea.":
    "Salz im Wasser, in Gramm je Kilogramm: 0 in Süßwasser, 35 im offenen Meer.",
  "Paper that cards and handouts are laid out for.": "Papier, für das Karten und Blätter gesetzt werden.",
  "Length of the rods that learners have.": "Länge der Ruten, die Lernende haben.",
  "Day of this edition, which stands at the foot of pages and on booklets and labels.":
    "Tag dieser Ausgabe; er steht am Fuß der Seiten, auf Heften und auf Etiketten.",
  "What makes the pages look your own: a mark in images/, a font in fonts/, two colours.":
    "Was die Seiten zu deinen macht: ein Zeichen in images/, eine Schrift in fonts/, zwei Farben.",
  "Where you are found; it stands at the foot of pages and at the end of handouts.":
    "Wo man dich findet; es steht am Fuß der Seiten und am Ende der Blätter.",
  "What of the guide that comes with dotdown is used: none, or for each kind all, none, or names and tags.":
    "Was von dem Führer genommen wird, den dotdown mitbringt: none (nichts), oder je Art all (alles), none, oder Namen und Merkmale.",
  "Lessons, by name or part of the course.": "Lektionen, mit Namen oder Teil des Kurses.",
  "Rigs, by name, level, water or pattern.": "Montagen, mit Namen, Stufe, Wasser oder Muster.",
  "Floats, by name or kind.": "Posen, mit Namen oder Art.",
  "Baits, by name.": "Köder, mit Namen.",
  "Knots, by name.": "Knoten, mit Namen.",
  "Fish, by name.": "Fische, mit Namen.",
  "Outfits, by name.": "Ausrüstungen, mit Namen.",
  "Single pages, by name.": "Einzelne Seiten, mit Namen.",
};
