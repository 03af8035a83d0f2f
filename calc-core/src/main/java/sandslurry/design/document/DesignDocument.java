package sandslurry.design.document;

import com.fasterxml.jackson.core.ErrorReportConfiguration;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import sandslurry.design.DesignFields;
import sandslurry.fact.Seen;
import sandslurry.units.ShownText;

/**
 * The texts of a design as they were typed, right or wrong: the one document behind the file and
 * the form. Immutable: a change makes a new document, so that undo is a list of documents.
 *
 * <p>Fields are addressed by JSON Pointer (RFC 6901), for example {@code /lines/0/flow/design}. An
 * address of version 1 of the file, as {@code /flow/design}, means that of the first line.
 */
public final class DesignDocument {
  private static final int LONGEST_TOKEN = 40;

  /** Numbers keep every figure that was typed; a program that saves them changes none. */
  private static final JsonMapper JSON =
      JsonMapper.builder(
              JsonFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxNestingDepth(DocumentLimits.DEPTH)
                          .maxNameLength(DocumentLimits.FIELD_NAME)
                          .maxNumberLength(DocumentLimits.NUMBER)
                          .build())
                  .errorReportConfiguration(
                      ErrorReportConfiguration.builder().maxErrorTokenLength(LONGEST_TOKEN).build())
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                  .build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .build();

  /** Where a message of the JSON library tells of itself instead of the file. */
  private static final Pattern LIBRARY_WORDS =
      Pattern.compile(
          "\\[Source: [^;\\]]*; |, from `[^`]*`| \\(bound as [^)]*\\)|: not allowed as per .*$"
              + "|: enable `[^`]*` to allow| \\(not recognized as one [^)]*\\)|\\](?=\\)$)");

  private static final String NO_TEXT = "a design file is a text in UTF-8, and this is none";

  /** Half of a pair of characters, which no encoding can hold; JSON can, as an escape. */
  private static final Pattern HALF = Pattern.compile("\\p{Cs}");

  private final ObjectNode root;

  /** Whether the file was of version 1, so that problems are told at the places that it has. */
  private final boolean old;

  private DesignDocument(ObjectNode root, boolean old) {
    this.root = root;
    this.old = old;
  }

  private DesignDocument with(ObjectNode changed) {
    return new DesignDocument(changed, old);
  }

  /**
   * Whether this was a file of version 1, whose line was moved to the list of lines when it was
   * read. Problems are told at the places of that file.
   *
   * @return false for a file of the version that is written
   */
  public boolean isOld() {
    return old;
  }

  /**
   * The same document, with problems told at the places that it has now.
   *
   * @return the document as it is saved
   */
  public DesignDocument renewed() {
    return old ? new DesignDocument(root, false) : this;
  }

  /**
   * A document without any text.
   *
   * @return a document that holds only the version of the format
   */
  public static DesignDocument empty() {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("formatVersion", DesignFields.FORMAT_VERSION);
    return new DesignDocument(root, false);
  }

  /**
   * Reads the text of a design file of any version. What the fields say is not checked here: see
   * {@link #read}.
   *
   * @param text JSON
   * @return the document
   * @throws DesignTextException if the text is not a JSON object, with line and column
   */
  public static DesignDocument parse(String text) throws DesignTextException {
    ObjectNode root = object(text);
    boolean old = VersionOne.is(root);
    if (old) {
      VersionOne.renew(root);
    }
    return new DesignDocument(root, old);
  }

  private static ObjectNode object(String text) throws DesignTextException {
    if (text.length() > DocumentLimits.BYTES) {
      throw tooLarge();
    }
    try {
      // Some editors mark a file as UTF-8 by a character that belongs to no text.
      JsonNode node = JSON.readTree(text.startsWith("\ufeff") ? text.substring(1) : text);
      if (node instanceof ObjectNode object) {
        return object;
      }
      throw new DesignTextException("a design file holds one JSON object { ... }");
    } catch (NumberFormatException e) {
      throw noNumber(e);
    } catch (JsonProcessingException e) {
      String where =
          e.getLocation() == null
              ? ""
              : "line "
                  + e.getLocation().getLineNr()
                  + ", column "
                  + e.getLocation().getColumnNr()
                  + ": ";
      throw new DesignTextException(
          ShownText.message(
              where
                  + LIBRARY_WORDS
                      .matcher(e.getOriginalMessage())
                      .replaceAll("")
                      .replaceFirst(
                          "Trailing token .* found after value", "more follows the end of it")));
    }
  }

  /** A number that no machine can hold, such as one with fifty figures in its exponent. */
  private static DesignTextException noNumber(NumberFormatException e) {
    return new DesignTextException(
        ShownText.message(
            e.getMessage()
                .replace(
                    " can not be deserialized as `java.math.BigDecimal`, reason",
                    " is no number")));
  }

  private static DesignTextException tooLarge() {
    return new DesignTextException("it holds more than " + DocumentLimits.BYTES + " bytes");
  }

  /**
   * Reads a design file.
   *
   * @param file a file in UTF-8
   * @return the document
   * @throws IOException if the file cannot be read
   * @throws DesignTextException if the file is not JSON in UTF-8
   */
  public static DesignDocument load(Path file) throws IOException, DesignTextException {
    try (InputStream in = Files.newInputStream(file)) {
      return read(in);
    }
  }

  /**
   * Reads a design from a stream, such as standard input; no more of it than a design may hold.
   *
   * @param in the stream, in UTF-8; it stays open
   * @return the document
   * @throws IOException if it cannot be read
   * @throws DesignTextException if it is not JSON in UTF-8
   */
  public static DesignDocument read(InputStream in) throws IOException, DesignTextException {
    byte[] bytes = in.readNBytes(DocumentLimits.BYTES + 1);
    if (bytes.length > DocumentLimits.BYTES) {
      throw tooLarge();
    }
    // Of two bytes or four a letter: no JSON begins with a nought.
    if (bytes.length > 1 && (bytes[0] == 0 || bytes[1] == 0)) {
      throw new DesignTextException(NO_TEXT);
    }
    try {
      return parse(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException e) {
      throw new DesignTextException(NO_TEXT);
    }
  }

  /**
   * Writes the document to a file, whole or not at all, as {@link WholeFile} does.
   *
   * @param file the file, which may exist
   * @throws IOException if it cannot be written; an existing file is then as it was
   */
  public void save(Path file) throws IOException {
    WholeFile.write(file, toString().getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Reads the texts into a design.
   *
   * @return the design, or all problems
   */
  public Reading read() {
    return DesignReader.read(root, old);
  }

  /**
   * A group of the document as it stands, for the conditions of fields.
   *
   * @param pointer JSON Pointer of the group
   * @return the group in its document
   */
  public Seen seen(String pointer) {
    JsonPointer where = at(pointer);
    JsonNode around = where.head() == null ? root : root.at(where.head());
    return new Seen(new JsonTree(root), new JsonTree(around), new JsonTree(root.at(where)));
  }

  /**
   * The text of a field.
   *
   * @param pointer JSON Pointer of the field
   * @return the text; empty when the field is absent or is not a text or number
   */
  public String text(String pointer) {
    return root.at(at(pointer)).asText("");
  }

  /**
   * Says whether a field, list or part is there.
   *
   * @param pointer JSON Pointer
   * @return true when the document has something at that place
   */
  public boolean has(String pointer) {
    return !root.at(at(pointer)).isMissingNode();
  }

  /**
   * The number of entries of a list.
   *
   * @param pointer JSON Pointer of the list
   * @return its size; 0 when it is absent
   */
  public int size(String pointer) {
    JsonNode node = root.at(at(pointer));
    return node.isArray() ? node.size() : 0;
  }

  /**
   * The document with one text changed. Parts on the way are made as needed; a list grows by one
   * when the index is its size. A blank text removes the field.
   *
   * @param pointer JSON Pointer of the field
   * @param text the new text
   * @return the changed document, or this one when nothing changes
   */
  public DesignDocument with(String pointer, String text) {
    if (text.isBlank()) {
      return without(pointer);
    }
    if (text.equals(text(pointer)) && has(pointer)) {
      return this;
    }
    ObjectNode copy = root.deepCopy();
    JsonPointer where = at(pointer);
    put(parent(copy, where), where.last(), JsonNodeFactory.instance.textNode(text));
    return with(copy);
  }

  /**
   * The document without a field, an entry of a list or a whole part.
   *
   * @param pointer JSON Pointer of what to remove
   * @return the changed document, or this one when there is nothing at that place
   */
  public DesignDocument without(String pointer) {
    if (pointer.isEmpty() || !has(pointer)) {
      return this;
    }
    ObjectNode copy = root.deepCopy();
    JsonPointer where = at(pointer);
    JsonNode parent = copy.at(where.head());
    if (parent instanceof ObjectNode object) {
      object.remove(where.last().getMatchingProperty());
    } else if (parent instanceof ArrayNode array) {
      array.remove(where.last().getMatchingIndex());
    }
    return with(copy);
  }

  /**
   * The document with a new entry in a list, a copy of a given JSON text.
   *
   * @param pointer JSON Pointer of the list; made when absent
   * @param index where to put the entry, 0 to the size of the list
   * @param json the entry as JSON
   * @return the changed document
   * @throws IllegalArgumentException if the entry is not JSON or the place is not a list
   */
  public DesignDocument insert(String pointer, int index, String json) {
    ObjectNode copy = root.deepCopy();
    JsonPointer where = at(pointer);
    if (!(copy.at(where) instanceof ArrayNode)) {
      put(parent(copy, where), where.last(), JsonNodeFactory.instance.arrayNode());
    }
    try {
      ((ArrayNode) copy.at(where)).insert(index, JSON.readTree(json));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("not JSON: " + json, e);
    }
    return with(copy);
  }

  /**
   * The document with a whole part replaced by a given JSON text.
   *
   * @param pointer JSON Pointer of the part; made when absent
   * @param json the part as JSON
   * @return the changed document
   * @throws IllegalArgumentException if the text is not a JSON object
   */
  public DesignDocument withPart(String pointer, String json) {
    ObjectNode copy = root.deepCopy();
    JsonPointer where = at(pointer);
    try {
      put(parent(copy, where), where.last(), object(json));
    } catch (DesignTextException e) {
      throw new IllegalArgumentException("not a JSON object: " + json, e);
    }
    return with(copy);
  }

  /**
   * The document of one of the lines beside the plant, in which it is judged.
   *
   * @param place its place in the list
   * @return the document with that line alone, without settling lane, screw and gravity pipe
   */
  public DesignDocument ofLine(int place) {
    ObjectNode copy = root.deepCopy();
    JsonNode line = copy.at("/lines/" + place);
    copy.remove(List.of("lane", "screw", "gravityRun"));
    copy.putArray("lines").add(line);
    return with(copy);
  }

  /**
   * The JSON text of a part.
   *
   * @param pointer JSON Pointer
   * @return the part as JSON, empty when absent
   */
  public String json(String pointer) {
    JsonNode node = root.at(at(pointer));
    return node.isMissingNode() ? "" : node.toString();
  }

  /**
   * Every input: what was typed, and the defaults that count where nothing was.
   *
   * @return the inputs in the order of the fields
   */
  public List<TypedInput> inputs() {
    return TypedInput.all(new JsonTree(root));
  }

  /** What stands at the top against the rules is meant itself, so that it can be taken away. */
  private JsonPointer at(String pointer) {
    JsonPointer typed = JsonPointer.compile(pointer);
    boolean top = !typed.matches() && root.has(typed.getMatchingProperty());
    return top ? typed : JsonPointer.compile(VersionOne.renewed(pointer));
  }

  /**
   * Where something was typed, known or not.
   *
   * @param pointer JSON Pointer of a field, a list or a part; empty for the whole document
   * @return the JSON Pointers of all texts there and below, in the order of the file
   */
  public List<String> places(String pointer) {
    List<String> places = new ArrayList<>();
    JsonPointer from = at(pointer);
    if (!root.at(from).isMissingNode()) {
      collect(root.at(from), from, places);
    }
    return places;
  }

  private static void collect(JsonNode node, JsonPointer at, List<String> places) {
    if (node.isObject()) {
      node.properties().forEach(f -> collect(f.getValue(), at.appendProperty(f.getKey()), places));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        collect(node.get(i), at.appendIndex(i), places);
      }
    } else {
      places.add(at.toString());
    }
  }

  /**
   * The document with what another one says at some places, to the letter.
   *
   * @param other the other document
   * @param places JSON Pointers, those of a list in their order
   * @return the changed document
   */
  public DesignDocument withThoseOf(DesignDocument other, List<String> places) {
    ObjectNode copy = root.deepCopy();
    for (String place : places) {
      JsonPointer where = JsonPointer.compile(place);
      put(parent(copy, where), where.last(), other.root.at(where).deepCopy());
    }
    return new DesignDocument(copy, old);
  }

  private static JsonNode parent(ObjectNode root, JsonPointer pointer) {
    JsonNode node = root;
    for (JsonPointer step = pointer; !step.tail().matches(); step = step.tail()) {
      JsonNode child =
          node.isArray()
              ? node.path(step.getMatchingIndex())
              : node.path(step.getMatchingProperty());
      if (!child.isContainerNode()) {
        boolean list = step.tail().mayMatchElement();
        child = list ? JsonNodeFactory.instance.arrayNode() : JsonNodeFactory.instance.objectNode();
        put(node, step, child);
      }
      node = child;
    }
    return node;
  }

  private static void put(JsonNode parent, JsonPointer last, JsonNode value) {
    if (parent instanceof ObjectNode object) {
      object.set(last.getMatchingProperty(), value);
    } else if (parent instanceof ArrayNode array) {
      int index = last.getMatchingIndex();
      if (index < 0 || index > array.size()) {
        throw new IllegalArgumentException("a list of " + array.size() + " has no place " + last);
      }
      if (index == array.size()) {
        array.add(value);
      } else {
        array.set(index, value);
      }
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DesignDocument document && document.root.equals(root);
  }

  @Override
  public int hashCode() {
    return root.hashCode();
  }

  /**
   * The document as the text of a design file.
   *
   * @return indented JSON that ends with a line break
   */
  @Override
  public String toString() {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER));
    printer.indentArraysWith(indenter);
    printer.indentObjectsWith(indenter);
    try {
      String text = JSON.writer(printer).writeValueAsString(root) + "\n";
      return HALF.matcher(text)
          .replaceAll(
              half -> String.format(Locale.ROOT, "\\\\u%04x", (int) half.group().charAt(0)));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of texts can always be written", e);
    }
  }
}
