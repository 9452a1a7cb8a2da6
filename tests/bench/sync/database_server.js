// A general document database with its own HTTP server, to measure against: pouchdb and
// express-pouchdb from npm, in leveldb.
//
//   node database_server.js FOLDER MODULES     prints its port, runs until it is stopped
const [folder, modules] = process.argv.slice(2);
const need = require('module').createRequire(modules + '/');
const PouchDB = need('pouchdb').defaults({ prefix: folder + '/' });
const app = need('express')();
app.use('/', need('express-pouchdb')(PouchDB, {
  mode: 'minimumForPouchDB',
  inMemoryConfig: true,
  logPath: folder + '/log.txt',
}));
const server = app.listen(0, '127.0.0.1', () => console.log(server.address().port));
