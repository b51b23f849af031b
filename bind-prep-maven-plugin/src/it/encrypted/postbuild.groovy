String log = new File(basedir, 'build.log').getText('UTF-8')
assert log =~ /by-file\.pdf: good, \d+ pages?/
assert log =~ /by-server\.pdf: good, \d+ pages?/
// a warning, as the proof is not encrypted
assert log =~ /(?m)^\[WARNING\] by-server\.pdf: proof: /
String password = new File(basedir, 'secret/password.txt').readLines('UTF-8')[0]
assert !log.contains(password)
new File(basedir, 'target/bind-prep').eachFileRecurse(groovy.io.FileType.FILES) {
    assert !it.name.endsWith('.json') && !it.name.endsWith('.txt') || !it.getText('UTF-8').contains(password)
}
return true
