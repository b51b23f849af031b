import java.nio.file.Files

Files.copy(new File(fixtures, 'members-handbook-a4.pdf').toPath(), new File(basedir, 'handbook.pdf').toPath())
return true
