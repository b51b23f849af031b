import java.nio.file.Files

def copy = { String fixture, String to ->
    File target = new File(basedir, to)
    target.parentFile.mkdirs()
    Files.copy(new File(fixtures, fixture).toPath(), target.toPath())
}
copy('calendar-a4-landscape.pdf', 'docs/calendar.pdf')
copy('cookbook-letter.pdf', 'docs/cookbook.pdf')
copy('members-handbook-a4.pdf', 'docs/handbook.pdf')
copy('shop-stocks.csv', 'jobs/shop-stocks.csv')
return true
