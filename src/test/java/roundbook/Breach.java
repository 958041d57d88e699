package roundbook;

import java.io.File;
import java.io.IOException;
import java.io.StringWriter;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.StandardLocation;
import javax.tools.ToolProvider;
import roundbook.units.Length;

/**
 * A small class put into a room, to see whether the architecture's checks find it.
 *
 * @param room the room's name
 * @param body what stands between the braces of the class
 */
record Breach(String room, String body) {
  private static final String NAME = "Intruder";

  /** Compiles the class into a folder and returns the folder. */
  Path compiledInto(Path folder) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter said = new StringWriter();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
      files.setLocationFromPaths(StandardLocation.CLASS_OUTPUT, List.of(folder));
      String seen = folder + File.pathSeparator + System.getProperty("java.class.path");
      List<String> options = List.of("-proc:none", "-nowarn", "-classpath", seen);
      if (!compiler.getTask(said, files, null, options, null, List.of(source())).call()) {
        throw new IllegalStateException(said.toString());
      }
    }
    return folder;
  }

  /** Returns the folder that holds the program's own compiled classes. */
  static Path programClasses() {
    try {
      URI place = Length.class.getProtectionDomain().getCodeSource().getLocation().toURI();
      if (Files.isDirectory(Path.of(place))) {
        return Path.of(place);
      }
      throw new IllegalStateException("not a folder of classes: " + place);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private JavaFileObject source() {
    String text = "package " + Room.ROOT + room + ";\npublic class " + NAME + " {" + body + "}\n";
    return new SimpleJavaFileObject(
        URI.create("string:///" + NAME + ".java"), JavaFileObject.Kind.SOURCE) {
      @Override
      public CharSequence getCharContent(boolean ignoreEncodingErrors) {
        return text;
      }
    };
  }
}
