String log = new File(basedir, 'build.log').getText('UTF-8')
File reports = new File(basedir, 'target/bind-prep')
// the report of every document is there although the build failed
assert reports.list().sort() == ['.made', 'cookbook.json', 'cookbook.txt', 'handbook.json', 'handbook.txt']
def report = new groovy.json.JsonSlurper().parse(new File(reports, 'cookbook.json'), 'UTF-8')
assert report.outcome == 'findings'
assert report.pages.findAll { it.verdict == 'hit' }*.page == [14, 27]
assert log.contains('handbook.pdf: good, 24 pages')
assert log =~ /(?m)^\[ERROR\] .*cookbook\.pdf: Do not print\. /
assert log =~ /  error: Page 14: /
assert log.contains('Have it moved')
assert log.contains('report: target/bind-prep/cookbook.txt')
assert log =~ /Why the build fails: of 2 documents 1 has findings that fail the build\./
// a failure of the content, not of the goal
assert log.contains('MojoFailureException')
return true
