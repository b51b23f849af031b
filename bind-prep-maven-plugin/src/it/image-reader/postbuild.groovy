String log = new File(basedir, 'build.log').getText('UTF-8')
// the added reader's picture is black
assert log.contains('Page 1: picture 2.8 mm from the binding edge')
assert !log.contains('cannot be decoded')
return true
