String log = new File(basedir, 'build.log').getText('UTF-8')
File reports = new File(basedir, 'target/bind-prep')
def report = { String name ->
    new groovy.json.JsonSlurper().parse(new File(reports, name + '.json'), 'UTF-8')
}
// one file with two jobs is two documents
assert reports.list().findAll { it.endsWith('.json') }.sort() ==
    ['calendar.json', 'docs_cookbook-2.json', 'docs_cookbook.json', 'handbook.json']
assert report('calendar').job.bindingEdge == 'top'
assert report('calendar').job.stock.name == 'bond-20'
// its own job file, a table beside that file, and the goal's job beneath it
assert report('docs_cookbook').job.copies == 3
assert report('docs_cookbook').job.stock.name == 'felt-200'
assert report('docs_cookbook').job.bindingEdge == 'left'
assert report('docs_cookbook-2').plan.method == 'coil'
assert report('docs_cookbook-2').job.stock.name == 'bond-20'
assert report('handbook').plan.method == 'wire'
assert log.contains('docs/handbook.pdf: good, 24 pages')
return true
