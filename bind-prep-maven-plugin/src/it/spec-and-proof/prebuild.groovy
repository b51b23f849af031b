import java.nio.file.Files

def copy = { String fixture, String to ->
    File target = new File(basedir, to)
    target.parentFile.mkdirs()
    Files.copy(new File(fixtures, fixture).toPath(), target.toPath())
}
copy('cookbook-letter.pdf', 'target/cookbook.pdf')
copy('members-handbook-a4.pdf', 'target/handbook.pdf')
return true
