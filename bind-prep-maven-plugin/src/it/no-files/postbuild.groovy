String log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('No PDF found')
assert log.contains('<documents>')
assert log.contains('MojoFailureException')
return true
