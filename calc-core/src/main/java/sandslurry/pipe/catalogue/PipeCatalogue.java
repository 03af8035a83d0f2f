package sandslurry.pipe.catalogue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sandslurry.units.Measure;

/**
 * The standard pipes. The data and their sources are in the resource {@code standard-pipes.csv}.
 *
 * <p>NPS 5 is left out: it is standard but rarely stocked, so it would be poor advice as the next
 * smaller size.
 */
public final class PipeCatalogue {
  private static final String RESOURCE = "standard-pipes.csv";
  private static final Map<Integer, Integer> DN_OF_NPS =
      Map.of(3, 80, 4, 100, 6, 150, 8, 200, 10, 250, 12, 300);
  private static final Pattern INCHES =
      Pattern.compile("(?:nps)?(\\d+)(?:in|in\\.|inch|inches|\"|″|'')|nps(\\d+)\"?");
  private static final Pattern MILLIMETRES = Pattern.compile("(?:od|dn|de|d)?(\\d+)mm");
  private static final Pattern DN = Pattern.compile("dn(?:/od)?(\\d+)");
  private static final List<StandardPipe> ALL = read();

  private PipeCatalogue() {}

  /**
   * Every pipe known.
   *
   * @return the pipes, in the order of the data
   */
  public static List<StandardPipe> all() {
    return ALL;
  }

  /**
   * The standards known.
   *
   * @return their names as written in files, such as "ASTM D1785"
   */
  public static List<String> systems() {
    return Arrays.stream(PipeSystem.values()).map(PipeSystem::standard).toList();
  }

  /**
   * The sizes of a standard.
   *
   * @param system name of the standard
   * @return the sizes as written in files, ascending
   * @throws IllegalArgumentException if there is no such standard; the message lists those known
   */
  public static List<String> sizes(String system) {
    return distinct(system(system), StandardPipe::size);
  }

  /**
   * The schedules or dimension ratios of a standard.
   *
   * @param system name of the standard
   * @return the classes as written in files
   * @throws IllegalArgumentException if there is no such standard; the message lists those known
   */
  public static List<String> classes(String system) {
    return distinct(system(system), StandardPipe::wallClass);
  }

  /**
   * The schedules or dimension ratios of one size of a standard.
   *
   * @param system name of the standard
   * @param size nominal size, spelt as for {@link #find}
   * @return its classes as written in files; empty when the standard has no such size here
   */
  public static List<String> classes(String system, String size) {
    PipeSystem known = system(system);
    return ALL.stream()
        .filter(pipe -> pipe.system() == known)
        .filter(pipe -> isSize(pipe, size))
        .map(StandardPipe::wallClass)
        .toList();
  }

  /**
   * Looks for a pipe.
   *
   * @param system name of the standard: "ASTM D1785", "D1785", "PVC, ASTM D1785"
   * @param size nominal size: for inch pipe "6 in", {@code 6"}, "NPS 6" or "DN 150", for ISO pipe
   *     "160 mm" or "DN 160"
   * @param wallClass schedule or dimension ratio: "Sch 40", "schedule 40", "SDR 26", "DR 26"
   * @return the pipe, or nothing when one of the three is unknown; {@link #get} says which
   */
  public static Optional<StandardPipe> find(String system, String size, String wallClass) {
    return findSystem(system)
        .flatMap(
            known ->
                ALL.stream()
                    .filter(pipe -> pipe.system() == known)
                    .filter(pipe -> isSize(pipe, size))
                    .filter(pipe -> plainClass(pipe.wallClass()).equals(plainClass(wallClass)))
                    .findFirst());
  }

  /**
   * Looks for a pipe that must be there.
   *
   * @param system name of the standard, spelt as for {@link #find}
   * @param size nominal size
   * @param wallClass schedule or dimension ratio
   * @return the pipe
   * @throws IllegalArgumentException if one of the three is unknown; the message lists what exists
   */
  public static StandardPipe get(String system, String size, String wallClass) {
    return find(system, size, wallClass)
        .orElseThrow(() -> new IllegalArgumentException(refusal(system, size, wallClass)));
  }

  /**
   * The pipes from which the next smaller or larger one is chosen.
   *
   * @param pipe a pipe
   * @return the pipes of the same standard and wall class, itself included, ascending by bore
   */
  public static List<StandardPipe> sameSystemAndClass(StandardPipe pipe) {
    return ALL.stream()
        .filter(other -> other.system() == pipe.system())
        .filter(other -> other.wallClass().equals(pipe.wallClass()))
        .sorted(Comparator.comparingDouble(StandardPipe::largestBoreM))
        .toList();
  }

  private static String refusal(String system, String size, String wallClass) {
    String standard = system(system).standard();
    List<String> classes = classes(system, size);
    if (classes.isEmpty()) {
      return standard
          + " has no size \""
          + size
          + "\" here; its sizes are "
          + String.join(", ", sizes(standard));
    }
    return standard
        + " has no class \""
        + wallClass
        + "\" of size "
        + size
        + " here; its classes are "
        + String.join(", ", classes);
  }

  private static PipeSystem system(String name) {
    return findSystem(name)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "there is no pipe standard \""
                        + name
                        + "\" here; known are "
                        + String.join(", ", systems())));
  }

  /**
   * Finds a standard by its name, with or without its publisher or material.
   *
   * @param name such as "ASTM D1785", "D1785" or "PVC D1785"
   * @return the standard, or nothing
   */
  public static Optional<PipeSystem> findSystem(String name) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    return Arrays.stream(PipeSystem.values())
        .filter(system -> spellings(system).contains(plain))
        .findFirst();
  }

  private static List<String> spellings(PipeSystem system) {
    String standard = system.standard().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    String material = system.material().words().toLowerCase(Locale.ROOT);
    String number = standard.replaceFirst("^(astm|asme)", "");
    return List.of(standard, number, material + standard, standard + material);
  }

  private static boolean isSize(StandardPipe pipe, String size) {
    String plain = size.toLowerCase(Locale.ROOT).replaceAll("[\\s-]", "");
    OptionalInt dn = number(DN, plain);
    int nominal = Integer.parseInt(pipe.size().substring(0, pipe.size().indexOf(' ')));
    if (pipe.system().sizedByInches()) {
      OptionalInt inches = number(INCHES, plain);
      return inches.isPresent() && inches.getAsInt() == nominal
          || dn.isPresent() && dn.getAsInt() == DN_OF_NPS.get(nominal);
    }
    OptionalInt millimetres = number(MILLIMETRES, plain);
    return millimetres.isPresent() && millimetres.getAsInt() == nominal
        || dn.isPresent() && dn.getAsInt() == nominal;
  }

  private static OptionalInt number(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    if (!matcher.matches()) {
      return OptionalInt.empty();
    }
    String digits = matcher.group(1) != null ? matcher.group(1) : matcher.group(2);
    return digits.length() > 4 ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(digits));
  }

  /** Dimension ratios are written SDR in one standard and DR in another; people mix them. */
  private static String plainClass(String wallClass) {
    return wallClass
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\s-]", "")
        .replaceFirst("^(schedule|sched\\.?|sch\\.)", "sch")
        .replaceFirst("^sdr", "dr");
  }

  private static List<String> distinct(PipeSystem system, Function<StandardPipe, String> what) {
    return ALL.stream().filter(pipe -> pipe.system() == system).map(what).distinct().toList();
  }

  private static List<StandardPipe> read() {
    try (InputStream stream = PipeCatalogue.class.getResourceAsStream(RESOURCE);
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      return reader.lines().filter(line -> !line.startsWith("#")).map(PipeCatalogue::pipe).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static StandardPipe pipe(String line) {
    String[] cells = line.split(",", -1);
    var length = Measure.LENGTH.entry(cells[3]);
    OptionalDouble rating =
        cells[7].isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                Measure.PRESSURE.entry(cells[8]).toSi(Double.parseDouble(cells[7])));
    return new StandardPipe(
        systemOf(cells[0]),
        cells[1],
        cells[2],
        length.toSi(Double.parseDouble(cells[4])),
        length.toSi(Double.parseDouble(cells[5])),
        length.toSi(Double.parseDouble(cells[6])),
        rating);
  }

  private static PipeSystem systemOf(String standard) {
    return findSystem(standard).orElseThrow();
  }
}
