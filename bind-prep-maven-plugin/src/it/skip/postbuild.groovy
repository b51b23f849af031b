String log = new File(basedir, 'build.log').getText('UTF-8')
File reports = new File(basedir, 'target/bind-prep')
assert log.count('skipped (bindprep.skip)') == 3
assert !reports.exists()
return true
