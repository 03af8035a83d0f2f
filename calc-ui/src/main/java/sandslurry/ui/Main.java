package sandslurry.ui;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** Starts the program: without arguments the form, with {@code judge FILE} a report on paper. */
@Command(
    name = "sandslurry",
    header = Product.NAME + ".",
    description = {
      "Judges a transfer line with its pump, and a settling lane, from a design file.",
      "Without a command it opens the form.",
      ""
    },
    footer = {"", Product.CAUTION},
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    subcommands = {JudgeCommand.class, SizeCommand.class, FormCommand.class})
public final class Main implements Callable<Integer> {
  /** Everything that keeps a design from being judged ends with this code. */
  static final int BAD_INPUT = 3;

  @Spec private CommandSpec spec;

  @Option(
      names = "--trace",
      scope = ScopeType.INHERIT,
      description = "Print the stack trace of an unexpected error.")
  private boolean trace;

  private Main() {}

  /**
   * Runs the program and leaves with 0 (pass), 1 (caution), 2 (fail) or 3 (bad input).
   *
   * @param args the command line
   */
  public static void main(String[] args) {
    PrintStream out = utf8(FileDescriptor.out);
    PrintStream err = utf8(FileDescriptor.err);
    System.exit(run(new PrintWriter(out, true), new PrintWriter(err, true), args));
  }

  private static PrintStream utf8(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
  }

  static int run(PrintWriter out, PrintWriter err, String... args) {
    Main main = new Main();
    CommandLine line = new CommandLine(main);
    line.setOut(out).setErr(err);
    line.setUsageHelpWidth(100);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler(
        (e, given) -> {
          err.println(e.getMessage());
          err.println("Try --help.");
          return BAD_INPUT;
        });
    line.setExecutionExceptionHandler(
        (e, command, parsed) -> {
          if (e instanceof BadInputException) {
            err.println(e.getMessage());
          } else {
            err.println("Unexpected error: " + oneLine(e));
            if (main.trace) {
              e.printStackTrace(err);
            }
          }
          return BAD_INPUT;
        });
    int code = line.execute(args);
    out.flush();
    err.flush();
    return code;
  }

  private static String oneLine(Throwable e) {
    return e.toString().replaceAll("\\s+", " ");
  }

  @Override
  public Integer call() throws BadInputException {
    return FormCommand.open(null);
  }

  /** Name and version in a line. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {Product.NAME + " " + Product.version()};
    }
  }
}
