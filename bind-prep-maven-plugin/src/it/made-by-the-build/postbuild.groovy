String log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('target/books/handbook.pdf: good, 24 pages')
assert new File(basedir, 'target/bind-prep/handbook.job-sheet.pdf').isFile()
return true
