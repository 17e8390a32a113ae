// Those of a guide that says nothing of one of them: the masthead of its pages, and the accent of drawings on light ones.

export const usualMain = "#0d3b40";
export const usualAccent = "#a6361a";
