String log = new File(basedir, 'build.log').getText('UTF-8')
// every goal with what it does, and every parameter with its default and its property
['bind-prep:check', 'bind-prep:help', 'bind-prep:proof', 'bind-prep:spec'].each {
    assert log.contains(it)
}
['documents', 'failOn', 'formats (Default: json,text)', 'User property: bindprep.skip', 'flagged', 'paper'].each {
    assert log.contains(it)
}
return true
