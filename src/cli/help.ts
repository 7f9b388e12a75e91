/** What `cornerpost help` prints. */
export const HELP = `cornerpost: from one job file to a pack for the shop

  cornerpost pack <job file> --into <folder> [--book <price book file>]
      Reads the job file and writes its pack into the folder: findings with
      their working, drawings, quantities, cut list, price and plan.
      Without --book, the price book that the job names is looked for beside
      the job file, as price-books/<id>.price-book.json.

  cornerpost check <job file> [--working]
      Prints the findings alone, worst first; with --working, the working of
      each. Needs no price book.

  cornerpost foam <job file> [--build-up <name>] [--book <price book file>]
      Looks for the least foam on each build-up, or on the one named, and
      prints cold surfaces, heat loss and price by thickness, and what other
      framing would do. Takes a while; the price book is found as for pack.

  cornerpost help
      Prints this.

Ends with 0 when done, with 1 when something hindered it (the message says
what), and with 2 when check finds something that stops the build.

Cornerpost computes. It approves nothing: licensed people and local
authorities decide.
`;
