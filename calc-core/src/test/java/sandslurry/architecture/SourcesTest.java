package sandslurry.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What is asked of the sources of the program and can be seen in no compiled class. */
class SourcesTest {
  private static final List<Path> PROGRAM =
      List.of(Path.of("src", "main", "java"), Path.of("..", "calc-ui", "src", "main", "java"));
  private static final int LONGEST = 60;
  private static final int MOST_COMPONENTS = 10;

  /** Stands over a record that has more, and goes on with the reason. */
  private static final String WHY = "// More than ten components: ";

  private static final List<String> METHODS = new ArrayList<>();
  private static final List<String> LONG = new ArrayList<>();
  private static final List<String> RECORDS = new ArrayList<>();
  private static final List<String> UNARGUED = new ArrayList<>();
  private static final List<String> NAMES = new ArrayList<>();

  @BeforeAll
  static void read() throws IOException {
    List<Path> files = new ArrayList<>();
    for (Path root : PROGRAM) {
      try (Stream<Path> walked = Files.walk(root)) {
        walked.filter(file -> file.toString().endsWith(".java")).forEach(files::add);
      }
    }
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(files));
      Trees trees = Trees.instance(task);
      for (CompilationUnitTree unit : task.parse()) {
        unit.getTypeDecls().stream()
            .filter(ClassTree.class::isInstance)
            .forEach(type -> NAMES.add(((ClassTree) type).getSimpleName().toString()));
        new Look(unit, trees).scan(unit, null);
      }
    }
  }

  /** Methods with their lines, and records with more components than a reader takes in. */
  private static final class Look extends TreeScanner<Void, Void> {
    private final CompilationUnitTree unit;
    private final Trees trees;

    Look(CompilationUnitTree unit, Trees trees) {
      this.unit = unit;
      this.trees = trees;
    }

    private long line(long position) {
      return unit.getLineMap().getLineNumber(position);
    }

    private String at(Tree tree, CharSequence name) {
      String file = Path.of(unit.getSourceFile().getName()).getFileName().toString();
      return file
          + " "
          + name
          + ":"
          + line(trees.getSourcePositions().getStartPosition(unit, tree));
    }

    @Override
    public Void visitMethod(MethodTree method, Void none) {
      long start = trees.getSourcePositions().getStartPosition(unit, method);
      long end = trees.getSourcePositions().getEndPosition(unit, method);
      METHODS.add(at(method, method.getName()));
      if (line(end) - line(start) >= LONGEST) {
        LONG.add(at(method, method.getName()));
      }
      return super.visitMethod(method, none);
    }

    @Override
    public Void visitClass(ClassTree type, Void none) {
      if (type.getKind() == Tree.Kind.RECORD) {
        long components =
            type.getMembers().stream()
                .filter(VariableTree.class::isInstance)
                .filter(
                    m -> !((VariableTree) m).getModifiers().getFlags().contains(Modifier.STATIC))
                .count();
        if (components > MOST_COMPONENTS) {
          RECORDS.add(at(type, type.getSimpleName()));
          if (!isArgued(type)) {
            UNARGUED.add(at(type, type.getSimpleName()));
          }
        }
      }
      return super.visitClass(type, none);
    }

    private boolean isArgued(ClassTree type) {
      try {
        String text = unit.getSourceFile().getCharContent(true).toString();
        long start = trees.getSourcePositions().getStartPosition(unit, type);
        String before = text.substring(0, (int) start).stripTrailing();
        return before.substring(before.lastIndexOf('\n') + 1).strip().startsWith(WHY);
      } catch (IOException e) {
        throw new AssertionError(e);
      }
    }
  }

  @Test
  void noMethodIsLongerThanAScreen() {
    assertThat(METHODS).hasSizeGreaterThan(3000);
    assertThat(LONG).isEmpty();
  }

  @Test
  void aRecordOfManyPartsSaysWhy() {
    assertThat(RECORDS).isNotEmpty();
    assertThat(UNARGUED).isEmpty();
  }

  @Test
  void noClassHasTheNameOfAnother() {
    assertThat(NAMES).hasSizeGreaterThan(500).doesNotHaveDuplicates();
  }
}
