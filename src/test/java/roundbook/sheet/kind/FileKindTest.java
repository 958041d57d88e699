package roundbook.sheet.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.problem.words.Sentences;

/**
 * Files told by how they begin. Signatures from the published formats: zip (APPNOTE 4.3.7),
 * compound files (MS-CFB 2.2), PDF (ISO 32000-1, 7.5.2), PNG (W3C), GIF89a, JPEG (ITU T.81), rich
 * text and SYLK from memory.
 */
class FileKindTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "'', EMPTY",
    "504B030414000600, ZIP",
    "504B0506000000000000000000000000, ZIP",
    "D0CF11E0A1B11AE10000000000000000, OLE2",
    "255044462D312E370A, PDF",
    "89504E470D0A1A0A0000000D49484452, PICTURE",
    "474946383961010001000000000000, PICTURE",
    "FFD8FFE000104A46494600010100, PICTURE",
    "0900040000001000, OLD_SHEET",
    "0001020304050607080910, BINARY",
    "7F454C46020101000000000000000000, BINARY",
  })
  void tellsBytes(String bytes, FileKind kind) throws IOException {
    assertEquals(kind, kind(HexFormat.of().parseHex(bytes)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Log,Length\\n1,18\\n | TEXT",
        "BM,Length\\n1,18\\n | TEXT",
        "P | TEXT",
        "PK list\\n1 2\\n | TEXT",
        "< 18 ft; > 20 ft | TEXT",
        "[1] is the first | JSON",
        "{\"log\": 1} | JSON",
        "[{\"log\": 1}] | JSON",
        "{curly} words | TEXT",
        "{\\\\rtf1 text} | RTF",
        "ID;PWXL;N;E\\nP;PGeneral\\n | SYLK",
        "ID;Length;Mid\\n1;18;13\\n | TEXT",
        "TABLE\\n0,1\\n\"x\"\\n | DIF",
        "TABLE\\n12,13\\n | TEXT",
        "<?xml version=\"1.0\"?><a/> | XML",
        "<HarvestedProduction/> | XML",
        "<!DOCTYPE html><p> | HTML",
        "<!-- saved --><table><tr> | HTML",
        "<table border=1><tr> | HTML",
        "<?xml version=\"1.0\"?><html/> | HTML",
      })
  void tellsTexts(String text, FileKind kind) throws IOException {
    String whole = text.replace("\\n", "\n").replace("\\\\", "\\");
    assertEquals(kind, kind(whole.getBytes(StandardCharsets.UTF_8)));
    assertEquals(kind, kind(("\uFEFF" + whole).getBytes(StandardCharsets.UTF_8)), "with its mark");
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE", "UTF-16", "ISO-8859-1", "windows-1251"})
  void aTallyIsTextInEveryEncoding(String encoding) throws IOException {
    String tally = "Nr;L\u00E4nge;Zopf\r\n1;5,5;30\r\n2;6,0;28\r\n";
    assertEquals(FileKind.TEXT, kind(tally.getBytes(Charset.forName(encoding))));
  }

  @Test
  void noiseIsNoText() throws IOException {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 50; i++) {
      byte[] noise = new byte[500];
      random.nextBytes(noise);
      noise[0] = 0;
      assertEquals(FileKind.BINARY, kind(noise));
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyKindHasAWord(FileKind kind) {
    assertFalse(kind.phrase().in(Sentences.english()).isBlank());
    assertFalse(kind.phrase().in(Sentences.of("de")).isBlank());
  }

  private FileKind kind(byte[] bytes) throws IOException {
    return FileKind.of(Files.write(folder.resolve("file"), bytes));
  }
}
