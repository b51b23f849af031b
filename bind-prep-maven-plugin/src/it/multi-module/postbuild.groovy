String log = new File(basedir, 'build.log').getText('UTF-8')
['handbook', 'planner'].each {
    assert new File(basedir, it + '/target/bind-prep/book.json').getText('UTF-8').contains('"good"')
    assert new File(basedir, it + '/target/bind-prep/book.txt').isFile()
}
// nothing to check in the parent, and no word about it
assert !new File(basedir, 'target').exists()
assert log.count('target/book.pdf: good') == 2
assert !log.contains('not marked as thread-safe')
return true
