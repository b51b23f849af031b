String log = new File(basedir, 'build.log').getText('UTF-8')
File reports = new File(basedir, 'target/bind-prep')
assert log.contains('target/handbook.pdf: good, 24 pages')
assert reports.list().sort() == ['.made', 'cookbook.pdf', 'handbook.json', 'handbook.txt']
def report = new groovy.json.JsonSlurper().parse(new File(reports, 'handbook.json'), 'UTF-8')
assert report.outcome == 'good'
assert report.input.file == 'target/handbook.pdf'
assert report.pages.size() == 24
return true
