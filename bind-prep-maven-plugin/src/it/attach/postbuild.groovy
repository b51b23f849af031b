String log = new File(basedir, 'build.log').getText('UTF-8')
['check.json', 'junit.xml', 'job-sheet.pdf', 'proof.pdf'].each {
    String name = 'attach-1-handbook-' + it
    assert log.count(name) >= 2
    assert new File(localRepositoryPath, 'io/bindprep/it/attach/1/' + name).isFile()
}
// what is attached is no document of the next build, wherever Maven keeps copies of it
assert log.count('pdf: job sheet: ') == 2
assert log.count('BUILD SUCCESS') == 2
return true
