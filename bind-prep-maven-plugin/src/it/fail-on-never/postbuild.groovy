String log = new File(basedir, 'build.log').getText('UTF-8')
File reports = new File(basedir, 'target/bind-prep')
def report = new groovy.json.JsonSlurper().parse(new File(reports, 'cookbook.json'), 'UTF-8')
assert report.pages.findAll { it.verdict == 'punched' }*.page == [14, 27]
assert log.contains('cookbook.pdf: good, 100 pages')
return true
