String log = new File(basedir, 'build.log').getText('UTF-8')
File made = new File(basedir, 'target/bind-prep')
def pdf = { String name ->
    String bytes = new File(made, name).getText('ISO-8859-1')
    bytes.startsWith('%PDF-') && bytes.trim().endsWith('%%EOF')
}
// in the package phase, before the check may fail the build
['cookbook', 'handbook'].each {
    assert pdf(it + '.job-sheet.pdf')
    assert pdf(it + '.proof.pdf')
}
assert new File(made, 'cookbook.proof.pdf').getText('ISO-8859-1').contains('/OC ')
// the page for people has its pictures, though the plugin's classes are not the build's
String page = new File(made, 'cookbook.html').getText('UTF-8')
assert page.contains('Do not print')
assert page.contains('data:image/')
assert new File(made, 'handbook.html').isFile()
// what is made is not taken for a document of the build
assert !made.list().any { it.startsWith('cookbook.proof.') && it != 'cookbook.proof.pdf' }
assert log =~ /(?m)^\[WARNING\] target\/cookbook\.pdf: Do not print\. .*$/
['cookbook', 'handbook'].each {
    String sheet = 'target/bind-prep/' + it + '.job-sheet.'
    assert log.contains('job sheet: ' + sheet + 'pdf, ' + sheet + 'html, ' + sheet + 'json')
    assert new File(made, it + '.job-sheet.html').getText('UTF-8').contains(it + '.pdf')
    assert new groovy.json.JsonSlurper().parse(new File(made, it + '.job-sheet.json'), 'UTF-8').assembly
    // three goals: the document is looked at once
    assert log.count('target/' + it + '.pdf: checked earlier in this build') == 2
}
assert log =~ /(?m)^\[INFO\] target\/cookbook\.pdf: proof: target\/bind-prep\/cookbook\.proof\.pdf, \d+ comments$/
assert log.contains('report: target/bind-prep/cookbook.txt')
return true
