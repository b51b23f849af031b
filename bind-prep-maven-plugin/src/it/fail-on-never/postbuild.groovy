String log = new File(basedir, 'build.log').getText('UTF-8')
File reports = new File(basedir, 'target/bind-prep')
def report = new groovy.json.JsonSlurper().parse(new File(reports, 'cookbook.json'), 'UTF-8')
assert report.pages.findAll { it.verdict == 'hit' }*.page == [14, 27]
// let through, but not called good
assert report.outcome == 'findings'
assert log =~ /(?m)^\[WARNING\] cookbook\.pdf: Do not print\. .*check does not fail/
assert log =~ /  error: Page 14: /
assert reports.list().sort() as List == ['.made', 'cookbook.json', 'cookbook.junit.xml', 'cookbook.sarif']
return true
