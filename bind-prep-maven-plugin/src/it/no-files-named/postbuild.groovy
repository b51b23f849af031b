String log = new File(basedir, 'build.log').getText('UTF-8')
// fails although nobody said failIfNoFiles, as the POM names what to check
assert log.contains('No PDF found, so nothing was checked')
assert log.contains('books (there is no such folder): *.pdf')
assert log.contains('MojoFailureException')
return true
