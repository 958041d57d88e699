package roundbook.xml;

import com.fasterxml.aalto.stax.InputFactoryImpl;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.io.ByteOrderMark;
import org.apache.commons.io.input.BOMInputStream;
import org.apache.commons.io.input.CloseShieldInputStream;
import org.apache.commons.io.input.XmlStreamReader;

/**
 * Opens XML from files that anyone can have made.
 *
 * <p>Document types and entities from outside are off. Bytes are turned into letters here, strictly
 * by the encoding that the XML declares: the runtime's reader does so too, but prints wrong bytes
 * on the terminal before it throws.
 */
public final class SafeXml {
  private static final XMLInputFactory FACTORY = factory();
  private static final int SNIFFED = 1 << 14;

  private SafeXml() {}

  private static XMLInputFactory factory() {
    XMLInputFactory factory = new InputFactoryImpl();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_VALIDATING, false);
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
    return factory;
  }

  /**
   * Opens a stream of XML as events.
   *
   * @param in the bytes; the caller closes them
   * @throws IOException if they cannot be read or are no text in the encoding declared
   * @throws XMLStreamException if there is no XML
   */
  public static XMLStreamReader open(InputStream in) throws IOException, XMLStreamException {
    BufferedInputStream bytes = new BufferedInputStream(in, SNIFFED);
    bytes.mark(SNIFFED);
    Charset charset = charset(encoding(bytes));
    bytes.reset();
    return charset.equals(StandardCharsets.UTF_8)
        ? FACTORY.createXMLStreamReader(TagCount.of(bytes), charset.name())
        : FACTORY.createXMLStreamReader(TagCount.of(letters(bytes, charset)));
  }

  private static Reader letters(InputStream bytes, Charset charset) throws IOException {
    BOMInputStream unmarked =
        BOMInputStream.builder()
            .setInputStream(bytes)
            .setByteOrderMarks(ByteOrderMark.UTF_8, ByteOrderMark.UTF_16LE, ByteOrderMark.UTF_16BE)
            .get();
    // A decoder made so reports what it cannot read instead of replacing it.
    return new InputStreamReader(unmarked, charset.newDecoder());
  }

  private static Charset charset(String name) throws IOException {
    try {
      return Charset.forName(name);
    } catch (IllegalArgumentException unknown) {
      throw new IOException("the XML declares an unknown encoding: " + name, unknown);
    }
  }

  private static String encoding(InputStream bytes) throws IOException {
    try (XmlStreamReader sniffer =
        XmlStreamReader.builder().setInputStream(CloseShieldInputStream.wrap(bytes)).get()) {
      return sniffer.getEncoding();
    }
  }
}
