String log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('owner-only.pdf: no proof')
assert log.contains('Its owner does not allow it to be changed')
assert !new File(basedir, 'target/bind-prep/owner-only.proof.pdf').exists()
return true
