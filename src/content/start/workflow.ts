/** Where a host of repositories looks for it. */
export const workflowPath = ".github/workflows/guide.yaml";

/** Checks the guide, builds its site, and publishes it where the host serves the pages of a repository. */
export const workflow = `# Publishes the guide each time that something is pushed to the branch main.
# Once, in the settings of the repository: Pages, source: workflow. Put the address that it says there into site-address.
name: guide
on:
  push:
    branches: [main]
permissions:
  contents: read
  pages: write
  id-token: write
concurrency: guide
jobs:
  publish:
    runs-on: ubuntu-latest
    environment: github-pages
    steps:
      - uses: actions/checkout@v4
      - uses: actions/setup-node@v4
        with:
          node-version: 22
      # The dotdown that package.json names; without one, the newest.
      - run: if [ -f package-lock.json ]; then npm ci; fi
      - run: npx --yes dotdown check
      - run: npx --yes dotdown build --for web
      - uses: actions/upload-pages-artifact@v3
        with:
          path: out/site
      - uses: actions/deploy-pages@v4
`;
