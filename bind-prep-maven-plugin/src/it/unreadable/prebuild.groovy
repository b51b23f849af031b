import java.nio.file.Files

def copy = { String fixture, String to ->
    File target = new File(basedir, to)
    target.parentFile.mkdirs()
    Files.copy(new File(fixtures, fixture).toPath(), target.toPath())
}
['damaged.pdf', 'members-handbook-a4.pdf', 'word-file.pdf'].each { copy(it, 'documents/' + it) }
return true
