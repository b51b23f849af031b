import java.util.jar.JarEntry
import java.util.jar.JarOutputStream
import javax.tools.ToolProvider

// the reader's jar, as a repository holds it
File home = new File(localRepositoryPath, 'io/bindprep/it/jpx-reader/1')
home.mkdirs()
new File(home, 'jpx-reader-1.pom').text = '<project><modelVersion>4.0.0</modelVersion><groupId>io.bindprep.it</groupId>' +
    '<artifactId>jpx-reader</artifactId><version>1</version></project>'
File classes = new File(basedir, 'reader/classes')
classes.mkdirs()
assert ToolProvider.systemJavaCompiler.run(null, null, null, '-d', classes.path,
    new File(basedir, 'reader/Reader.java').path) == 0
new JarOutputStream(new FileOutputStream(new File(home, 'jpx-reader-1.jar'))).withCloseable { jar ->
    jar.putNextEntry(new JarEntry('META-INF/services/javax.imageio.spi.ImageReaderSpi'))
    jar.write('added.Reader$Spi\n'.bytes)
    ['added/Reader.class', 'added/Reader$Spi.class'].each {
        jar.putNextEntry(new JarEntry(it))
        jar.write(new File(classes, it).bytes)
    }
}

// a page with a picture of a kind of JPEG 2000 that is not decoded without the reader
List<String> objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    '<< /Type /Pages /Count 2 /Kids [3 0 R 4 0 R] >>',
    '<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Contents 5 0 R /Resources << /XObject << /Im 6 0 R >> >> >>',
    '<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] >>',
    '<< /Length 28 >>\nstream\nq 30 0 0 30 8 400 cm /Im Do \nendstream',
    '<< /Type /XObject /Subtype /Image /Width 400 /Height 400 /ColorSpace /DeviceGray /Filter /JPXDecode /Length 7 >>\n' +
        'stream\nunknown\nendstream',
]
StringBuilder pdf = new StringBuilder('%PDF-1.7\n')
List<Integer> places = objects.withIndex().collect { object, i ->
    int place = pdf.length()
    pdf << "${i + 1} 0 obj\n${object}\nendobj\n"
    place
}
int table = pdf.length()
pdf << "xref\n0 ${objects.size() + 1}\n0000000000 65535 f \n"
places.each { pdf << String.format('%010d 00000 n \n', it) }
pdf << "trailer\n<< /Size ${objects.size() + 1} /Root 1 0 R >>\nstartxref\n${table}\n%%EOF\n"
new File(basedir, 'book.pdf').bytes = pdf.toString().getBytes('ISO-8859-1')
return true
