package roundbook.xml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.aalto.UncheckedStreamException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * XML from outside reaches no other file, is decoded strictly, and keeps the reader busy for long.
 */
class SafeXmlTest {
  @TempDir Path folder;

  /** Returns all text of a document, read to its end. */
  private static String text(byte[] bytes) throws IOException, XMLStreamException {
    XMLStreamReader xml = SafeXml.open(new ByteArrayInputStream(bytes));
    StringBuilder text = new StringBuilder();
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.CHARACTERS) {
        text.append(xml.getText());
      }
    }
    return text.toString();
  }

  private static String text(String document) throws IOException, XMLStreamException {
    return text(document.getBytes(StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-8", "UTF-16", "UTF-16LE", "ISO-8859-1", "windows-1252"})
  void everyEncodingThatIsDeclaredIsRead(String name) throws Exception {
    String mark = name.equals("UTF-16LE") ? "\uFEFF" : "";
    String document = mark + "<?xml version=\"1.0\" encoding=\"" + name + "\"?><a>Größe</a>";
    assertEquals("Größe", text(document.getBytes(Charset.forName(name))));
  }

  @ParameterizedTest
  @CsvSource({"UTF-8, ISO-8859-1", "no-such-code, UTF-8"})
  void bytesThatAreNoTextInItAreRefused(String declared, String written) {
    byte[] bytes =
        ("<?xml version=\"1.0\" encoding=\"" + declared + "\"?><a>Größe</a>")
            .getBytes(Charset.forName(written));
    assertThrows(Exception.class, () -> text(bytes));
  }

  /** An entity that stands for a file of the machine must not bring its text in. */
  @Test
  void noEntityReachesAFile() throws Exception {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "the secret");
    String document =
        "<!DOCTYPE a [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]><a>before &e; after</a>";
    String read = "";
    try {
      read = text(document);
    } catch (XMLStreamException | UncheckedStreamException refused) {
      read = refused.getMessage();
    }
    assertFalse(read.contains("the secret"), read);
  }

  /** Entities of entities would grow a thousandfold. */
  @Test
  void entitiesDoNotGrow() throws Exception {
    StringBuilder type = new StringBuilder("<!DOCTYPE a [<!ENTITY e0 \"xxxxxxxxxx\">");
    for (int i = 1; i < 12; i++) {
      type.append("<!ENTITY e%d \"%s\">".formatted(i, "&e%d;".formatted(i - 1).repeat(10)));
    }
    String read = "";
    try {
      read = text(type + "]><a>&e11;</a>");
    } catch (XMLStreamException | UncheckedStreamException refused) {
      read = refused.getMessage();
    }
    assertTrue(read.length() < 10_000, "letters: " + read.length());
  }

  @ParameterizedTest
  @CsvSource({
    "1000, UTF-8, true",
    "1001, UTF-8, false",
    "1000, ISO-8859-1, true",
    "1001, ISO-8859-1, false"
  })
  void aTagOfMoreThanAThousandAttributesIsRefused(int count, String charset, boolean read)
      throws Exception {
    StringBuilder text = new StringBuilder("<?xml version='1.0' encoding='" + charset + "'?><a");
    for (int i = 0; i < count; i++) {
      text.append(" a").append(i).append(i % 2 == 0 ? "='>'" : "=\">'\"");
    }
    byte[] bytes = text.append(">text</a>").toString().getBytes(StandardCharsets.US_ASCII);
    if (read) {
      assertEquals("text", text(bytes));
    } else {
      Exception refused = assertThrows(Exception.class, () -> text(bytes));
      assertTrue(refused.toString().contains("1000 attributes"), refused.toString());
    }
  }

  /** One letter at a time is counted as many at once are. */
  @Test
  void readingLetterByLetterCountsToo() {
    String tag = "<a" + " b='1'".repeat(1001) + ">";
    assertThrows(IOException.class, () -> drained(TagCount.of(stream(tag))));
    assertThrows(IOException.class, () -> drained(TagCount.of(new InputStreamReader(stream(tag)))));
    assertThrows(
        IOException.class,
        () ->
            new InputStreamReader(TagCount.of(stream(tag)))
                .transferTo(java.io.Writer.nullWriter()));
  }

  private static InputStream stream(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.US_ASCII));
  }

  private static void drained(InputStream in) throws IOException {
    while (in.read() >= 0) {
      continue;
    }
  }

  private static void drained(Reader in) throws IOException {
    while (in.read() >= 0) {
      continue;
    }
  }
}
