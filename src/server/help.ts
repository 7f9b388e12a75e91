export const HELP = `Usage: npm start -- [command] [options]

  start               start the server (when no command is given)
  backup <file>       write all data into a new file, also while the server runs
  restore <file>      put a backup into an empty folder or database

  --folder <folder>   where the data is kept (data)
  --port <number>     where the server listens (4310; 0 for any that is free)
  --host <address>    an address of this machine alone (127.0.0.1)
  --help              show this

With DATABASE_URL set, the data is kept in that PostgreSQL database, and several
servers may work on it; the folder then holds only the backups that are made in
the app, under Jobs.`;
