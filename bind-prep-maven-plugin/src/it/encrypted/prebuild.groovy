import java.nio.file.Files

def copy = { String fixture, String to ->
    File target = new File(basedir, to)
    target.parentFile.mkdirs()
    Files.copy(new File(fixtures, fixture).toPath(), target.toPath())
}
copy('locked.pdf', 'by-file.pdf')
copy('locked.pdf', 'by-server.pdf')
copy('password.txt', 'secret/password.txt')
return true
