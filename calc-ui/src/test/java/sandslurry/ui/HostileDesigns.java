package sandslurry.ui;

import com.sun.management.OperatingSystemMXBean;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sandslurry.design.document.DesignDocument;

/** Design files that try to break the program, each with what must be said of it. */
final class HostileDesigns {
  /** What a file that may be judged after all is expected to say. */
  static final String JUDGED = "";

  /** Either judged or refused: the physics decides, and nothing may break. */
  static final String EITHER = "?";

  private static final DesignDocument LINE = Designs.example("parlor-line.json");
  private static final DesignDocument PLANT = Designs.example("closed-loop-dairy.json");

  /**
   * One file.
   *
   * @param name what it tries
   * @param content its bytes
   * @param said a pattern that one line of the refusal holds; empty when the design is judged
   */
  record Hostile(String name, byte[] content, String said) {
    @Override
    public String toString() {
      return name;
    }
  }

  private final List<Hostile> all = new ArrayList<>();

  private HostileDesigns() {}

  static List<Hostile> all() {
    HostileDesigns designs = new HostileDesigns();
    designs.noJson();
    designs.encodings();
    designs.numbers();
    designs.shapes();
    designs.lines();
    designs.sizes();
    designs.texts();
    designs.physics();
    designs.networks();
    return List.copyOf(designs.all);
  }

  private void add(String name, String content, String said) {
    all.add(new Hostile(name, content.getBytes(StandardCharsets.UTF_8), said));
  }

  private void add(String name, byte[] content, String said) {
    all.add(new Hostile(name, content, said));
  }

  private void add(String name, DesignDocument design, String said) {
    add(name, design.toString(), said);
  }

  /** The line with a text of the file replaced by raw JSON. */
  private void raw(String name, String old, String replacement, String said) {
    String text = LINE.toString();
    if (!text.contains(old)) {
      throw new IllegalStateException("the example has no " + old);
    }
    add(name, text.replace(old, replacement), said);
  }

  private void noJson() {
    add("nothing at all", "", "one JSON object");
    add("only space", " \n\t ", "one JSON object");
    add("a list", "[]", "one JSON object");
    add("the word null", "null", "one JSON object");
    add("a text", "\"design\"", "one JSON object");
    add("a web page", "<html><body>404</body></html>", "line 1, column 1");
    add("cut off in the middle", LINE.toString().substring(0, 400), "line \\d+, column \\d+");
    add("a comma too many", "{\"formatVersion\": 1,}", "line 1, column");
    add("two designs in one file", LINE + "" + LINE, "line \\d+, column \\d+: more follows");
    add("single quotes", "{'formatVersion': 1}", "line 1, column");
    add("a comment", "{\"formatVersion\": 1 /* first */}", "line 1, column .*comment\\?$");
    add("a group that is not closed", "{", "line 1, column 2: .* column: 1\\)$");
    add("a key twice", "{\"formatVersion\": 1, \"title\": \"a\", \"title\": \"b\"}", "title");
    raw("a key twice deep inside", "\"length\":", "\"length\": \"1 ft\", \"length\":", "length");
    add("lists without end", "[".repeat(100_000), "nesting depth|deep");
    add("groups without end", "{\"a\":".repeat(100_000), "nesting depth|deep");
    add(
        "groups without end inside a design",
        "{\"formatVersion\": 1, \"plant\": " + "{\"a\":".repeat(40) + "1" + "}".repeat(41),
        "nesting depth|deep");
    add("a control character in a text", "{\"title\": \"a\u0007b\"}", "line 1, column");
    add("not a number, bare", "{\"formatVersion\": NaN}", "line 1, column \\d+: .*'NaN'$");
    add("infinity, bare", "{\"formatVersion\": Infinity}", "line 1, column \\d+: .*'Infinity'$");
    add("a number with a plus", "{\"formatVersion\": +2}", "line 1, column .* plus signs$");
    add("a number with a leading nought", "{\"formatVersion\": 01}", "line 1, column");
    add("a word of 100,000 letters", "{\"title\": " + "x".repeat(100_000) + "}", "line 1, column");
  }

  private void encodings() {
    String text = LINE.toString();
    add("marked as UTF-8", "\ufeff" + text, JUDGED);
    add("marked twice", "\ufeff\ufeff" + text, "line 1, column");
    add("UTF-16 with its mark", text.getBytes(StandardCharsets.UTF_16), "UTF-8");
    add("UTF-16 without a mark", text.getBytes(StandardCharsets.UTF_16LE), "UTF-8");
    add("UTF-16 of the other order", text.getBytes(StandardCharsets.UTF_16BE), "UTF-8");
    add("line ends of an old system", text.replace("\n", "\r"), JUDGED);
    add("squeezed by a program", new byte[] {0x1f, (byte) 0x8b, 8, 0, 0, 0}, "UTF-8");
    add("a key twice, once in escapes", "{\"title\":\"a\",\"t\\u0069tle\":\"b\"}", "title");
    add("UTF-32", text.getBytes(Charset.forName("UTF-32")), "UTF-8|line 1, column");
    add(
        "Latin 1",
        LINE.with("/title", "Größe").toString().getBytes(StandardCharsets.ISO_8859_1),
        "UTF-8");
    add("half a character at the end", new byte[] {'{', '}', (byte) 0xc3}, "UTF-8");
    add("noughts only", new byte[4096], "UTF-8");
    add("line ends of another system", text.replace("\n", "\r\n"), JUDGED);
    add("a program", ByteBuffer.allocate(64).putInt(0x7f454c46).array(), "line 1, column");
  }

  private void numbers() {
    String field = "/lines/0/flow/design";
    for (String spoilt :
        new String[] {
          "NaN",
          "NaN gpm",
          "Infinity gpm",
          "-Infinity L/s",
          "1e400 gpm",
          "0x1p3 gpm",
          "1d gpm",
          "1,5 L/s",
          "1.2.3 gpm",
          "1e gpm",
          "--5 gpm",
          "+-5 gpm",
          "½ gpm",
          "五 gpm",
          "٣٥٠ gpm",
          "1/0 gpm",
          "9e307/1 gpm",
          "-350 gpm",
          "350",
          "350 furlongs",
          "350'000 gpm",
          "1_000 gpm",
          "gpm 350",
          "about 350 gpm",
          "350-360 gpm",
          "350 ± 5 gpm",
          "<350 gpm",
          "350 imp gal/min",
          "350 %",
          "350 gpm max",
          "-1/2 gpm",
          "³⁵⁰ gpm",
          "∞ gpm",
          "\u200b350 gpm",
          "350 g\u0440m",
          "1e1000000000 gpm",
          "TRUE",
          "350 gpm gpm",
          "1e-400 gpm",
          "350 gpm; rm -rf /",
          "${jndi:ldap://127.0.0.1/a}",
          "%s%n%x",
          "../../etc/passwd"
        }) {
      add("a flow of " + spoilt, LINE.with(field, spoilt), "^" + field + " = ");
    }
    add("a flow of " + "nine figures 10,000 times", LINE.with(field, "9".repeat(10_000)), "10000");
    String digits = "9".repeat(330);
    add("infinity over infinity", LINE.with(field, digits + "/" + digits + " gpm"), field);
    raw("a bare 1e400", "\"350 gpm\"", "1e400", "^" + field);
    raw("a bare 1e-400", "\"350 gpm\"", "1e-400", "^" + field);
    raw("an exponent without end", "\"350 gpm\"", "1e" + "9".repeat(50), field + "|is no number");
    raw("a number of 5,000 figures", "\"350 gpm\"", "1".repeat(5_000), "exceeds.*100");
    raw("true for a number", "\"350 gpm\"", "true", "^" + field + ".*must be a text");
    raw("null for a number", "\"350 gpm\"", "null", "^" + field + ".*is null");
    raw("a list for a number", "\"350 gpm\"", "[350]", "^" + field + ".*must be a text");
    raw("a group for a number", "\"350 gpm\"", "{\"gpm\": 350}", "^" + field);
    raw("a count of 2.5", "\"count\": 3", "\"count\": 2.5", "count");
    raw("a count of 1e9", "\"count\": 3", "\"count\": 1e9", "count");
    raw("a count below nought", "\"count\": 3", "\"count\": -3", "count");
    raw("a count of 10^18", "\"count\": 3", "\"count\": 1000000000000000000", "count");
    raw("another format", "\"formatVersion\": 2", "\"formatVersion\": 3", "versions 1 and 2");
    raw("a format of 2.0", "\"formatVersion\": 2", "\"formatVersion\": 2.0", "formatVersion");
  }

  private void shapes() {
    add("an empty group", "{}", "^/formatVersion");
    add("only a version", "{\"formatVersion\": 1}", "^/sand");
    for (String part : new String[] {"sand", "carrier", "lines", "titleBlock", "criteria"}) {
      for (String other : new String[] {"null", "\"x\"", "7", "false"}) {
        add(
            part + " is " + other,
            placed("/" + part, other),
            "^/" + part + "( = .*)?: (is null|must be a)");
      }
    }
    for (String part : new String[] {"sand", "carrier"}) {
      String inside = "/" + part + "/" + part;
      add(part + " is a list", placed("/" + part, "[]"), "^/" + part + ": must be a group");
      add(
          part + " twice inside itself",
          LINE.withPart(inside, LINE.json("/" + part)),
          "^" + inside + ": is not a field");
    }
    add(
        "runs as a group",
        LINE.withPart("/lines/0/route/runs", "{\"0\": {}}"),
        "^/lines/0/route/runs");
    add("runs of numbers", LINE.insert("/lines/0/route/runs", 0, "7"), "^/lines/0/route/runs/0");
    add(
        "a run that is null",
        LINE.insert("/lines/0/route/runs", 0, "null"),
        "^/lines/0/route/runs/0.*is null");
    add("no run", LINE.without("/lines/0/route/runs").toString(), "^/lines/0/route/runs");
    add("an unknown field", LINE.with("/lines/0/flow/desing", "350 gpm"), "^/lines/0/flow/desing");
    add(
        "a field of another case",
        LINE.with("/lines/0/flow/Design", "350 gpm"),
        "^/lines/0/flow/Design");
    add("a name with a slash", LINE.with("/lines/0/flow/a~1b", "1"), "^/lines/0/flow/a~1b");
    add("a field without a name", LINE.with("/lines/0/flow/", "1"), "^/lines/0/flow/");
    add("a field named by a number", LINE.with("/sand/99999999999999", "1"), "^/sand/9999");
    add("a field that programs know", LINE.with("/__proto__", "1").with("/@class", "x"), "@class");
  }

  /** The parts of a line, in their place of version 2 and where version 1 had them. */
  private void lines() {
    for (String part : new String[] {"mixture", "flow", "route", "pump", "suction", "states"}) {
      String place = "/lines/0/" + part;
      for (String other : new String[] {"null", "[]", "\"x\"", "7", "false"}) {
        add(
            part + " of a line is " + other,
            placed(place, other),
            "^" + place + "( = .*)?: (is null|must be a group)");
      }
      add(
          part + " where version 1 had it",
          LINE.toString().replaceFirst("\\{", "{\"" + part + "\": {},"),
          "^/" + part + ": .* its place is " + place + "$");
    }
    String line = LINE.json("/lines/0");
    add(
        "a design of version 1 that says 2",
        LINE.without("/lines").toString().replaceFirst("\\{", line.replaceFirst("}\\s*$", ",")),
        "^/route: .* its place is /lines/0/route$");
    for (String other : new String[] {"{}", "{\"0\": {}}", "[null]", "[7]", "[[]]", "[{}]", "[]"}) {
      add("lines that are " + other, placed("/lines", other), "^/lines");
    }
    add("a second line that is null", lines(line + ", null"), "^/lines/1: is null");
    add(
        "two lines of one name",
        lines(named(line, "A") + ", " + named(line, "A")),
        "^/lines/1/name");
    add("a line of 10,000 letters", LINE.with("/lines/0/name", "n".repeat(10_000)), "10000.*400");
    add("a line over two lines", LINE.with("/lines/0/name", "A\nB, C"), JUDGED);
    add("41 lines", lines(list(41, i -> named(line, "l" + i))), "^/lines: has 41.*40");
    add("10,000 lines", lines(list(10_000, i -> "{}")), "^/lines: has 10000.*40");
    add("40 empty lines", lines(list(40, i -> "{}")), "^/lines/31/route: is missing");
    add(
        "a class that this size has not",
        LINE.with("/lines/0/route/runs/0/pipe/class", "SDR 26"),
        "^/lines/0/route/runs/0/pipe/class .*: Sch 40, Sch 80$");
  }

  private static String lines(String lines) {
    return placed("/lines", "[" + lines + "]");
  }

  private static String named(String line, String name) {
    return line.replaceFirst("\\{", "{\"name\": \"" + name + "\",");
  }

  /** The line with any JSON in a place. */
  private static String placed(String place, String json) {
    return LINE.without(place).with(place, "here").toString().replace("\"here\"", json);
  }

  private static String list(int size, IntFunction<String> entry) {
    return IntStream.range(0, size).mapToObj(entry).collect(Collectors.joining(","));
  }

  private void sizes() {
    add("more than a megabyte", " ".repeat(1 << 20) + LINE, "1048576");
    add("notes of 30,000 letters", LINE.with("/notes", "n".repeat(30_000)), "30000.*20000");
    add("notes of 20,000 letters", LINE.with("/notes", "n".repeat(20_000)), JUDGED);
    add("a title of 10,000 letters", LINE.with("/title", "t".repeat(10_000)), "10000.*400");
    add("a title of 400 letters", LINE.with("/title", "t".repeat(400)), JUDGED);
    add(
        "a unit of 10,000 letters",
        LINE.with("/lines/0/flow/design", "3 " + "x".repeat(10_000)),
        "10002");
    add(
        "a unit of 300 letters",
        LINE.with("/lines/0/flow/design", "3 " + "x".repeat(300)),
        "x\u2026");
    add("a field name of 10,000 letters", LINE.with("/" + "f".repeat(10_000), "1"), "exceeds.*60");
    String run = LINE.json("/lines/0/route/runs/0");
    String shortRun =
        LINE.without("/lines/0/route/runs/0/fittings")
            .without("/lines/0/route/runs/0/rise")
            .with("/lines/0/route/runs/0/length", "6 ft")
            .with("/lines/0/route/runs/0/name", "run #")
            .json("/lines/0/route/runs/0");
    String runs = list(1_000, i -> run);
    add("1,000 runs", LINE.withPart("/lines/0/route", "{\"runs\": [" + runs + "]}"), "1000.*200");
    add(
        "100,000 unknown fields",
        "{\"formatVersion\": 1, " + list(90_000, i -> "\"f" + i + "\":1") + "}",
        "90001.*100");
    add(
        "4,500 unknown fields in 50 runs",
        LINE.withPart(
            "/lines/0/route",
            "{\"runs\": [" + list(50, i -> "{" + list(90, k -> "\"g" + k + "\":1") + "}") + "]}"),
        "more problems");
    add(
        "10,000 sieves",
        LINE.withPart(
            "/sand",
            "{\"gradation\": ["
                + list(10_000, i -> "{\"size\":\"" + (i + 1) + " um\",\"passing\":\"50 %\"}")
                + "]}"),
        "10000.*200");
    add(
        "50 runs of 6 ft",
        LINE.withPart(
            "/lines/0/route", "{\"runs\": [" + list(50, i -> shortRun.replace("#", "" + i)) + "]}"),
        JUDGED);
    add(
        "200 points of a curve",
        LINE.without("/lines/0/pump/curve")
            .withPart(
                "/lines/0/pump",
                LINE.without("/lines/0/pump/curve")
                    .json("/lines/0/pump")
                    .replaceFirst(
                        "}$",
                        ",\"curve\":["
                            + list(
                                200,
                                i ->
                                    "{\"flow\":\""
                                        + 3 * i
                                        + " gpm\",\"head\":\""
                                        + (95 - 0.0001 * i * i)
                                        + " ft\",\"efficiency\":\""
                                        + (i == 0 ? 0 : 40)
                                        + " %\"}")
                            + "]}")),
        JUDGED);
  }

  private void texts() {
    String[][] names = {
      {"that clears a terminal", "\u001b[2J\u001b[1;1HPASS"},
      {"that turns the direction", "safe\u202eSSAP\u202c"},
      {"with a nought in it", "a\u0000b"},
      {"over two lines", "PASS\nFAIL: none"},
      {"of markup", "<html><img src='http://127.0.0.1:1/x'>"},
      {"of a formula", "=cmd|' /C calc'!A0"},
      {"of half a pair", "a\ud800b"},
      {"of invisible marks", "\u200b\u200d\u2060"},
      {"of marks on marks", "Z" + "\u0353".repeat(300)},
      {"of format marks", "%n%s{0}{{x}}${y}#{z}"},
      {"of a path", "../../../etc/passwd"}
    };
    for (String[] name : names) {
      add("a title " + name[0], LINE.with("/title", name[1]), JUDGED);
      add("a run " + name[0], LINE.with("/lines/0/route/runs/0/name", name[1]), JUDGED);
    }
    for (String blank : new String[] {"", " \t "}) {
      add(
          "blank names \"" + blank + "\" where every flow rate fails",
          Designs.example("thick-manure-piston.json")
              .with("/title", blank)
              .with("/lines/0/name", blank)
              .with("/lines/0/route/runs/0/name", blank),
          JUDGED);
    }
    add("a unit of the plant of markup", PLANT.with("/plant/units/0/name", names[4][1]), JUDGED);
    add("a stream of controls", PLANT.with("/plant/pens/0/stream", names[0][1]), "^/plant");
    add("a flow with controls", LINE.with("/lines/0/flow/design", "350\u202e gpm"), "\\\\u202e");
    add(
        "a choice with controls",
        LINE.with("/lines/0/pump/kind", "piston\u0000"),
        "^/lines/0/pump/kind");
  }

  private void physics() {
    add(
        "flows upside down",
        LINE.with("/lines/0/flow/minimum", "380 gpm").with("/lines/0/flow/maximum", "330 gpm"),
        "^/lines/0/flow");
    add(
        "a line of no length",
        LINE.with("/lines/0/route/runs/0/length", "0 ft"),
        "^/lines/0/route/runs/0/length");
    add(
        "a rise longer than the pipe",
        LINE.with("/lines/0/route/runs/0/rise", "400 ft"),
        "^/lines/0/route/runs/0");
    add("no sand", LINE.with("/lines/0/mixture/volumeFraction", "0 %"), JUDGED);
    add("nearly all sand", LINE.with("/lines/0/mixture/volumeFraction", "40 %"), JUDGED);
    add(
        "sand and rate at once",
        LINE.with("/lines/0/mixture/sandRate", "1 kg/s"),
        "^/lines/0/mixture");
    add(
        "a curve of one point",
        LINE.without("/lines/0/pump/curve/4")
            .without("/lines/0/pump/curve/3")
            .without("/lines/0/pump/curve/2")
            .without("/lines/0/pump/curve/1"),
        "^/lines/0/pump");
    add("a curve that rises", LINE.with("/lines/0/pump/curve/0/head", "20 ft"), EITHER);
    add(
        "a curve of equal flows",
        LINE.with("/lines/0/pump/curve/1/flow", "300 gpm"),
        "^/lines/0/pump/curve");
    add("a curve without head", LINE.with("/lines/0/pump/curve/4/head", "0 ft"), EITHER);
    add(
        "an efficiency of 150 %",
        LINE.with("/lines/0/pump/curve/2/efficiency", "150 %"), "^/lines/0/pump/curve/2");
    add(
        "sieves upside down",
        LINE.without("/sand/gradation")
            .insert("/sand/gradation", 0, "{\"size\": \"1 mm\", \"passing\": \"0 %\"}")
            .insert("/sand/gradation", 1, "{\"size\": \"0.1 mm\", \"passing\": \"100 %\"}"),
        "^/sand");
    add(
        "one sieve",
        LINE.without("/sand/gradation")
            .insert("/sand/gradation", 0, "{\"size\": \"1 mm\", \"passing\": \"50 %\"}"),
        "^/sand");
    add(
        "a pipe that nobody makes",
        LINE.with("/lines/0/route/runs/0/pipe/size", "4.5 in"),
        "^/lines/0/route/runs/0/pipe");
    add(
        "a pipe and a bore",
        LINE.with("/lines/0/route/runs/0/bore", "4 in"),
        "^/lines/0/route/runs/0");
    add("ice", LINE.with("/carrier/temperature", "-40 degF"), "^/carrier/temperature");
    add(
        "the greatest flow",
        LINE.with("/lines/0/flow/minimum", "2000 L/s")
            .with("/lines/0/flow/design", "2000 L/s")
            .with("/lines/0/flow/maximum", "2000 L/s"),
        JUDGED);
    add(
        "the least flow",
        LINE.with("/lines/0/flow/minimum", "0.05 L/s")
            .with("/lines/0/flow/design", "0.05 L/s")
            .with("/lines/0/flow/maximum", "0.05 L/s"),
        JUDGED);
  }

  private void networks() {
    add("a unit that feeds itself alone", PLANT.with("/plant/units/1/in", "screened"), EITHER);
    add(
        "a stream that two take",
        PLANT.with("/plant/units/1/in", "box overflow, screened"),
        "^/plant");
    add("a stream that nobody makes", PLANT.with("/plant/units/1/in", "nothing"), "^/plant");
    add("a stream without a name", PLANT.with("/plant/units/1/in", " , ,"), "^/plant");
    add("two units of one name", PLANT.with("/plant/units/1/name", "Box"), "^/plant");
    add(
        "a kind that is not there",
        PLANT.with("/plant/units/1/kind", "reactor"),
        "^/plant/units/1");
    add("a plant without pens", PLANT.without("/plant/pens"), "^/plant");
    add("a plant that is empty", LINE.withPart("/plant", "{}"), "^/plant");
    add(
        "a pen without animals",
        PLANT.with("/plant/pens/0/cows", "0").with("/plant/pens/0/stalls", "0"),
        EITHER);
    add(
        "a herd in per cent",
        PLANT.with("/plant/pens/0/cows", "30000 %"),
        "^/plant/pens/0/cows.*a number is needed here: a bare number");
    add(
        "a pump of 60 Hz",
        LINE.with("/lines/0/pump/curveSpeed", "60 Hz"),
        "^/lines/0/pump/curveSpeed.*a rotational speed is needed here");
    add(
        "sand of 3 ft/100 ft",
        LINE.with("/lines/0/mixture/volumeFraction", "3 ft/100 ft"),
        "^/lines/0/mixture/volumeFraction.*a fraction is needed here");
    add("a herd of a million", PLANT.with("/plant/pens/0/cows", "1000000"), "^/plant/pens/0/cows");
    add(
        "a line that carries no stream",
        PLANT
            .withPart("/lines/0/mixture", "{\"stream\": \"ghost\"}")
            .withPart("/lines/0/flow", LINE.json("/lines/0/flow"))
            .withPart("/lines/0/route", LINE.json("/lines/0/route")),
        "^/lines/0/mixture");
    DesignDocument carried = Designs.example("lines-of-a-plant.json");
    add(
        "a stream that two lines carry",
        carried.with("/lines/1/mixture/stream", carried.text("/lines/0/mixture/stream")),
        "^/lines/1/mixture/stream .* is carried by \"Screen to cyclone\" already");
    add(
        "a stream that a pump and gravity carry",
        carried.insert(
            "/plant/gravityLines",
            0,
            "{\"stream\": \"screened\", \"bore\": \"200 mm\", \"slope\": \"1 %\"}"),
        "^/plant/gravityLines/0/stream|^/lines/0/mixture/stream .* a gravity line already");
    add("60 pens", withPens(60), EITHER);
    add("61 pens", withPens(61), "^/plant/pens.*61.*60");
  }

  private static DesignDocument withPens(int count) {
    DesignDocument plant = PLANT;
    StringBuilder in = new StringBuilder();
    for (int i = 3; i < count; i++) {
      plant =
          plant.insert(
              "/plant/pens",
              i,
              "{\"name\": \"p" + i + "\", \"stream\": \"m" + i + "\", \"cows\": \"3\"}");
      in.append(", m").append(i);
    }
    return plant.with("/plant/units/0/in", PLANT.text("/plant/units/0/in") + in);
  }

  /**
   * Judges every file of a folder in one machine: a line each with code, time of the processor and
   * name. What is said goes to files beside it, ending in {@code .out} and {@code .err}.
   */
  public static void main(String[] args) throws Exception {
    var machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    for (Path file : Files.list(Path.of(args[0])).sorted().toList()) {
      StringWriter out = new StringWriter();
      StringWriter err = new StringWriter();
      long start = machine.getProcessCpuTime();
      int code = Main.run(new PrintWriter(out), new PrintWriter(err), "judge", file.toString());
      long worked = (machine.getProcessCpuTime() - start) / 1_000_000;
      Files.writeString(Path.of(file + ".out"), out.toString());
      Files.writeString(Path.of(file + ".err"), err.toString());
      System.out.println(code + " " + worked + " " + file.getFileName());
    }
  }
}
