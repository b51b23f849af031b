String log = new File(basedir, 'build.log').getText('UTF-8')
File reports = new File(basedir, 'target/bind-prep')
def outcome = { String name ->
    new groovy.json.JsonSlurper().parse(new File(reports, name + '.json'), 'UTF-8').outcome
}
assert outcome('damaged') == 'unreadable'
assert outcome('members-handbook-a4') == 'good'
assert outcome('word-file') == 'unreadable'
assert log.contains('documents/damaged.pdf ')
assert log.contains('documents/word-file.pdf ')
assert log.contains('MojoExecutionException')
// what PDFBox says about a broken file stays out of the log
assert !log.contains('org.apache.pdfbox')
return true
