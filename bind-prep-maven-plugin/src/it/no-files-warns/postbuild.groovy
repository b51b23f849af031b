String log = new File(basedir, 'build.log').getText('UTF-8')
assert log =~ /(?m)^\[WARNING\] No PDF found, so nothing was checked$/
assert log =~ /Looked in target.*: \*\*\/\*\.pdf/
assert log.contains('BUILD SUCCESS')
return true
