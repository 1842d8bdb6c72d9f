package org.ensemblerules.example.benchmarks.rivals;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** A program written from the lines, a {@code switch} in a {@code switch}, and compiled. */
public final class SwitchRival implements Rival<Whole> {
  private static final String NAME = "Switches";

  private final SwitchCode code;

  /**
   * Writes the program and compiles it.
   *
   * @param table the lines; not null
   */
  public SwitchRival(NeutralTable table) {
    try {
      code =
          (SwitchCode)
              new Compiled(bytes(program(table)))
                  .loadClass(NAME)
                  .getDeclaredConstructor()
                  .newInstance();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public Whole input(Asked asked) {
    return Whole.of(asked);
  }

  @Override
  public String answer(Whole input) {
    return code.answer(input.place(), input.defect(), input.by(), input.size());
  }

  private static String program(NeutralTable table) {
    Map<Integer, Map<Integer, List<Line>>> places = new TreeMap<>();
    for (Line line : table.lines()) {
      places
          .computeIfAbsent(line.placeNumber(), place -> new TreeMap<>())
          .computeIfAbsent(line.defect().ordinal(), defect -> new ArrayList<>())
          .add(line);
    }
    StringBuilder code = new StringBuilder();
    code.append("public final class " + NAME + " implements " + SwitchCode.class.getName() + " {\n")
        .append("public String answer(int place, int defect, int by, long size) {\n")
        .append("switch (place) {\n");
    places
        .keySet()
        .forEach(
            place ->
                code.append("case " + place + ": return at" + place + "(defect, by, size);\n"));
    code.append("default: return \"\"; } }\n");
    places.forEach(
        (place, defects) -> {
          code.append("static String at" + place + "(int defect, int by, long size) {\n")
              .append("switch (defect) {\n");
          defects.forEach(
              (defect, lines) -> {
                code.append("case " + defect + ":\n");
                lines.forEach(line -> code.append(test(line)));
                code.append("return \"\";\n");
              });
          code.append("default: return \"\"; } }\n");
        });
    return code.append("}\n").toString();
  }

  private static String test(Line line) {
    return "if (by == "
        + line.by().ordinal()
        + " && size > "
        + line.over()
        + "L && size <= "
        + line.upTo()
        + "L) return \""
        + line.row()
        + "\";\n";
  }

  private static byte[] bytes(String program) {
    JavaCompiler compiler = Objects.requireNonNull(ToolProvider.getSystemJavaCompiler(), "a JDK");
    Output output = new Output();
    JavaFileObject source =
        new SimpleJavaFileObject(
            URI.create("string:///" + NAME + ".java"), JavaFileObject.Kind.SOURCE) {
          @Override
          public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return program;
          }
        };
    StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null);
    JavaFileManager written =
        new ForwardingJavaFileManager<>(files) {
          @Override
          public JavaFileObject getJavaFileForOutput(
              Location location,
              String name,
              JavaFileObject.Kind kind,
              javax.tools.FileObject near) {
            return output;
          }
        };
    List<String> options =
        List.of("-proc:none", "-classpath", System.getProperty("java.class.path"));
    if (!compiler.getTask(null, written, null, options, null, List.of(source)).call()) {
      throw new IllegalStateException("the program does not compile");
    }
    return output.bytes.toByteArray();
  }

  private static final class Output extends SimpleJavaFileObject {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

    Output() {
      super(URI.create("bytes:///" + NAME + ".class"), JavaFileObject.Kind.CLASS);
    }

    @Override
    public OutputStream openOutputStream() {
      return bytes;
    }
  }

  private static final class Compiled extends ClassLoader {
    private final byte[] bytes;

    Compiled(byte[] bytes) {
      super(SwitchRival.class.getClassLoader());
      this.bytes = bytes;
    }

    @Override
    protected Class<?> findClass(String name) {
      return defineClass(name, bytes, 0, bytes.length);
    }
  }
}
