package sandslurry.ui;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.concurrent.Callable;
import java.util.function.IntSupplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import sandslurry.units.ShownText;

/** Starts the program: without arguments the form, with {@code judge FILE} a report on paper. */
@Command(
    name = "sandslurry",
    header = Product.NAME + ".",
    description = {
      "Judges a design file: a transfer line with its pump, a settling lane, a plant from the pens"
          + " to the storage.",
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
    int code = BAD_INPUT;
    try {
      Console console = new Console(FileDescriptor.out);
      PrintWriter out = utf8(console);
      PrintWriter err = utf8(new Console(FileDescriptor.err));
      code = run(out, err, args);
      if (out.checkError() && !console.readerLeft()) {
        code = BAD_INPUT;
        err.println("The report could not be written to standard output.");
      }
    } finally {
      // Also when nothing could be said any more: the machine's own code would read as a caution.
      System.exit(code);
    }
  }

  /** In UTF-8, whatever the language of the process: a writer of its own would follow that. */
  private static PrintWriter utf8(Console console) {
    return new PrintWriter(new OutputStreamWriter(console, StandardCharsets.UTF_8), true);
  }

  /** Standard output, which remembers why it could not be written to. */
  private static final class Console extends FilterOutputStream {
    private String failure = "";

    Console(FileDescriptor descriptor) {
      super(new FileOutputStream(descriptor));
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      try {
        out.write(bytes, from, length);
      } catch (IOException e) {
        failure = String.valueOf(e.getMessage());
        throw e;
      }
    }

    /** Whoever read it, such as a pager, has had enough; that is no failure. */
    boolean readerLeft() {
      return failure.contains("Broken pipe");
    }
  }

  static int run(PrintWriter out, PrintWriter err, String... args) {
    Main main = new Main();
    CommandLine line = new CommandLine(main);
    line.setOut(out).setErr(err);
    line.setUsageHelpWidth(100);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    // A name that begins with @ is that of a file, not of more arguments.
    line.setExpandAtFiles(false);
    line.registerConverter(
        Path.class,
        name -> {
          try {
            return BadInputException.path(name);
          } catch (BadInputException e) {
            throw new CommandLine.TypeConversionException(e.getMessage());
          }
        });
    line.registerConverter(
        LocalDate.class,
        text -> {
          try {
            return LocalDate.parse(text);
          } catch (DateTimeParseException e) {
            throw new CommandLine.TypeConversionException(
                "\"" + text + "\" is no date: write one such as 2026-05-31.");
          }
        });
    line.setParameterExceptionHandler(
        (e, given) -> {
          String what =
              e instanceof CommandLine.MaxValuesExceededException
                  ? "A unit is sized for one aim: --capture, --recovery, --retention or"
                      + " --clean-out."
                  : oneLine(e.getMessage());
          err.println(ShownText.message(what + " Try --help."));
          return BAD_INPUT;
        });
    line.setExecutionExceptionHandler(
        (e, command, parsed) -> {
          if (e instanceof BadInputException) {
            err.println(e.getMessage());
          } else {
            report(err, e);
            if (main.trace) {
              e.printStackTrace(err);
            }
          }
          return BAD_INPUT;
        });
    int code = guarded(err, () -> line.execute(args));
    out.flush();
    err.flush();
    return code;
  }

  /** Runs with every error of the machine told in a line: its own code would read as a caution. */
  static int guarded(PrintWriter err, IntSupplier work) {
    try {
      return work.getAsInt();
    } catch (Error e) {
      report(err, e);
      return BAD_INPUT;
    }
  }

  /** Says in one line what should not have happened. */
  private static void report(PrintWriter err, Throwable e) {
    String what =
        e instanceof OutOfMemoryError
            ? "The machine has too little memory for this design; java -Xmx1g gives it more."
            : "Unexpected error: " + oneLine(e.toString());
    err.println(ShownText.message(what));
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ");
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
