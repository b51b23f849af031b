String log = new File(basedir, 'build.log').getText('UTF-8')
File reports = new File(basedir, 'target/bind-prep')
assert log.contains('skipped (bindprep.skip)')
assert !reports.exists()
return true
