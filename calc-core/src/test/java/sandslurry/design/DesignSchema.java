package sandslurry.design;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.List;
import sandslurry.fact.Content;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Kinds;
import sandslurry.fact.Listed;
import sandslurry.fact.Span;
import sandslurry.fact.Type;

/**
 * The JSON Schema (draft 2020-12) of a design file, for editors that complete and check. What it
 * cannot say, such as ranges of texts with units and rules between fields, the program checks.
 */
final class DesignSchema implements Content.Cases<ObjectNode> {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  /** A number followed by a unit. */
  private static final String WITH_UNIT = "\\d.*[^\\d\\s.]";

  private DesignSchema() {}

  /** The schema as the text of a file. */
  static String text() {
    ObjectNode schema = NODES.objectNode();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("title", "Design file");
    schema.setAll(properties(DesignFields.DESIGN));
    return schema.toPrettyString() + "\n";
  }

  private static ObjectNode properties(Fields<?> fields) {
    ObjectNode group = NODES.objectNode();
    group.put("type", "object");
    ObjectNode properties = group.putObject("properties");
    ArrayNode needed = NODES.arrayNode();
    for (Field<?> field : fields.all()) {
      ObjectNode own = of(field);
      if (properties.get(field.name()) instanceof ObjectNode other) {
        // A name that holds one thing or another.
        ObjectNode either = NODES.objectNode();
        either.putArray("anyOf").add(other).add(own);
        properties.set(field.name(), either);
      } else {
        properties.set(field.name(), own);
      }
      if (field.isNeeded() && fields.isAlways(field)
          || field.content() instanceof Listed<?> list
              && list.isNeeded()
              && fields.isAlways(field)) {
        needed.add(field.name());
      }
    }
    group.put("additionalProperties", false);
    if (!needed.isEmpty()) {
      group.set("required", needed);
    }
    return group;
  }

  private static ObjectNode of(Field<?> field) {
    ObjectNode schema = field.content().match(new DesignSchema());
    ObjectNode told = NODES.objectNode();
    told.put("title", field.label());
    told.put("description", field.help());
    if (!field.standard().isEmpty()) {
      told.put("default", field.standard());
    }
    if (!field.examples().isEmpty()) {
      field.examples().forEach(told.withArray("examples")::add);
    }
    told.setAll(schema);
    return told;
  }

  @Override
  public ObjectNode text(Type<?> type) {
    ObjectNode schema = NODES.objectNode();
    if (!type.choices().isEmpty()) {
      names(schema, type.choices().keySet());
    } else if (type.isNumber()) {
      schema.putArray("type").add("string").add("number");
    } else if (type.range("").isEmpty()) {
      schema.putArray("type").add("string").add("number");
    } else {
      schema.put("type", "string").put("pattern", WITH_UNIT);
    }
    return schema;
  }

  private static void names(ObjectNode schema, Collection<String> names) {
    names.forEach(schema.withArray("enum")::add);
  }

  @Override
  public ObjectNode span(Span<?> span) {
    ObjectNode value = text(span.type());
    ObjectNode group = NODES.objectNode();
    group.put("type", "object");
    List<String> ends = List.of("low", "base", "high");
    ObjectNode properties = group.putObject("properties");
    ends.forEach(end -> properties.set(end, value.deepCopy()));
    ends.forEach(group.withArray("required")::add);
    group.put("additionalProperties", false);
    ObjectNode either = NODES.objectNode();
    either.putArray("anyOf").add(value).add(group);
    return either;
  }

  @Override
  public ObjectNode group(Fields<?> fields) {
    return properties(fields);
  }

  @Override
  public ObjectNode kinds(Kinds<?> kinds) {
    ObjectNode schema = NODES.objectNode();
    schema.put("type", "object");
    ArrayNode each = schema.putArray("oneOf");
    for (Fields<?> fields : kinds.all()) {
      ObjectNode one = properties(fields);
      ((ObjectNode) one.path("properties").path(kinds.kind().name()))
          .removeAll()
          .put("const", fields.name());
      each.add(one);
    }
    return schema;
  }

  @Override
  public ObjectNode list(Listed<?> list) {
    ObjectNode schema = NODES.objectNode();
    schema.put("type", "array");
    schema.set("items", list.entry().match(this));
    if (list.isNeeded()) {
      schema.put("minItems", 1);
    }
    return schema;
  }
}
