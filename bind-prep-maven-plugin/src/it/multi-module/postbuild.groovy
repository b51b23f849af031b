String log = new File(basedir, 'build.log').getText('UTF-8')
['handbook', 'planner'].each {
    assert new File(basedir, it + '/target/bind-prep/book.json').getText('UTF-8').contains('"good"')
    ['book.txt', 'book.job-sheet.pdf', 'book.proof.pdf'].each { name ->
        assert new File(basedir, it + '/target/bind-prep/' + name).isFile()
    }
}
// nothing to check in the parent, and no word about it
assert !new File(basedir, 'target/bind-prep').exists()
assert log.count('target/book.pdf: good') == 2
assert !log.contains('not marked as thread-safe')
return true
