String log = new File(basedir, 'build.log').getText('UTF-8')
def builds = log.split('BUILD SUCCESS')
assert builds.size() == 6
String again = '(as before, nothing changed)'
assert builds[0].count(again) == 0
// three goals, two documents
assert builds[1].count(again) == 6
assert builds[1] =~ /(?m)^\[WARNING\] cookbook\.pdf: Do not print\. .* \(as before, nothing changed\)$/
assert builds[1].contains('report: target/bind-prep/cookbook.txt')
assert builds[2].count(again) == 0
// another format is another check; sheet and proof are as they were
assert builds[3].count(again) == 4
assert builds[4].count(again) == 6
// what was not looked at again is in the table all the same
String summary = new File(basedir, 'target/bind-prep/summary.md').getText('UTF-8')
assert summary.contains('2 documents: 1 with findings that fail nothing, 1 good.')
assert summary =~ /(?m)^\| cookbook\.pdf \| Do not print\..*\[json\]\(cookbook\.json\)/
assert summary =~ /(?m)^\| handbook\.pdf \| Good to print/
return true
