import java.nio.file.Files

def copy = { String fixture, String to ->
    File target = new File(basedir, to)
    target.parentFile.mkdirs()
    Files.copy(new File(fixtures, fixture).toPath(), target.toPath())
}
copy('members-handbook-a4.pdf', 'target/handbook.pdf')
// neither a test's PDF nor one of our own is the build's product
copy('cookbook-letter.pdf', 'target/test-classes/cookbook.pdf')
copy('cookbook-letter.pdf', 'target/bind-prep/cookbook.pdf')
return true
