String log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('a.pdf: good, 24 pages')
assert log.contains('b.pdf: good, 24 pages')
assert new File(basedir, 'reports/a.txt').isFile()
return true
