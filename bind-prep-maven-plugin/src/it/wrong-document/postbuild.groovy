String log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('handbook.pdf: <job><sides>: "three"')
assert log.contains('Known: one, two, two-head-to-foot')
assert !new File(basedir, 'target/bind-prep').exists()
return true
