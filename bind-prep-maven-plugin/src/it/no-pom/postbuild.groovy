String log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('handbook.pdf: good, 24 pages')
assert new File(basedir, 'target/bind-prep/handbook.json').isFile()
return true
