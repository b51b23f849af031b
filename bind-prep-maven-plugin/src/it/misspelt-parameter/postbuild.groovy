String log = new File(basedir, 'build.log').getText('UTF-8')
// Maven 3 alone would drop it in silence
assert log.contains('<failon>: the plugin has no such parameter')
assert log.contains('Did you mean <failOn>?')
return true
