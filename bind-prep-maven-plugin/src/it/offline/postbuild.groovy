String log = new File(basedir, 'build.log').getText('UTF-8')
assert log.count('BUILD SUCCESS') == 2
assert log.count('handbook.pdf: good, 24 pages') == 2
return true
