String log = new File(basedir, 'build.log').getText('UTF-8')
File reports = new File(basedir, 'target/bind-prep')
// two books of one name keep their reports apart
assert reports.list().sort() == ['.made',
    'a folder (first)_the book.json', 'a folder (first)_the book.txt',
    'another (second)_the book.json', 'another (second)_the book.txt']
assert log.contains('a folder (first)/the book.pdf: good, 24 pages')
// one page a leaf, as the job file says
def report = new groovy.json.JsonSlurper().parse(new File(reports, 'a folder (first)_the book.json'), 'UTF-8')
assert report.leaves == 24
return true
