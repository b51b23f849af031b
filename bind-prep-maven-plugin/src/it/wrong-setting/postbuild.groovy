String log = new File(basedir, 'build.log').getText('UTF-8')
File reports = new File(basedir, 'target/bind-prep')
// told even though there is no PDF yet
assert log =~ /(?m)<job><bindingEdge>: "bottom" .*\R.*left, right, top\.$/
assert log.contains('MojoExecutionException')
return true
