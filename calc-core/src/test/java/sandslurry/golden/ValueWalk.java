package sandslurry.golden;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import javax.measure.Quantity;
import sandslurry.assessment.Assessment;
import sandslurry.fact.finding.Finding;

/**
 * Every number of an Assessment by its path, quantities in SI, with nine digits.
 *
 * <p>The design is input and the working is text, so neither is walked; an object that stands twice
 * is told where it stands first in the order of names, a long list by its first, middle and last
 * item, and the ends of a band and other laws only by their findings.
 */
public final class ValueWalk {
  private static final MathContext DIGITS = new MathContext(9);
  private static final int WHOLE_LIST = 4;

  private static final Set<String> SKIPPED =
      Set.of("design", "working", "findings", "cautions", "bound", "about", "model");

  private final Map<String, String> values = new TreeMap<>();
  private final Map<Object, String> seen = new IdentityHashMap<>();

  private ValueWalk() {}

  public static Map<String, String> of(Assessment assessment) {
    ValueWalk walk = new ValueWalk();
    walk.object("", assessment);
    return walk.values;
  }

  /** Each finding by severity, element and id: its words may change. */
  public static List<String> findings(Assessment assessment) {
    return assessment.findings().stream().map(ValueWalk::line).sorted().toList();
  }

  private static String line(Finding finding) {
    return finding.severity() + " | " + finding.element() + " | " + finding.id();
  }

  private void value(String path, Object value) {
    if (value instanceof Number number) {
      values.put(path, number(number));
    } else if (value instanceof Quantity<?> quantity) {
      values.put(path, number(si(quantity)));
    } else if (value instanceof Boolean || value instanceof Enum<?>) {
      values.put(path, value.toString());
    } else if (value instanceof Optional<?> optional) {
      optional.ifPresent(present -> value(path, present));
    } else if (value instanceof OptionalDouble optional) {
      optional.ifPresent(present -> value(path, present));
    } else if (value instanceof Map<?, ?> map) {
      map(path, map);
    } else if (value instanceof Collection<?> items) {
      list(path, List.copyOf(items));
    } else if (value instanceof double[] items) {
      list(path, Arrays.stream(items).boxed().toList());
    } else if (value != null && value.getClass().getName().startsWith("sandslurry.")) {
      object(path, value);
    }
  }

  private void map(String path, Map<?, ?> map) {
    int i = 0;
    for (Map.Entry<?, ?> entry : map.entrySet()) {
      Object key = entry.getKey();
      boolean plain = key instanceof Enum<?> || key instanceof String || key instanceof Number;
      value(path + "{" + (plain ? key.toString() : Integer.toString(i)) + "}", entry.getValue());
      i++;
    }
  }

  private void list(String path, List<?> items) {
    int size = items.size();
    for (int i = 0; i < size; i++) {
      if (size <= WHOLE_LIST || i == 0 || i == size / 2 || i == size - 1) {
        value(path + "[" + i + "]", items.get(i));
      }
    }
    if (size > WHOLE_LIST) {
      values.put(path + ".size", Integer.toString(size));
    }
  }

  private void object(String path, Object object) {
    Class<?> type = object.getClass();
    if (type.isHidden() || type.isSynthetic() || type.getName().startsWith("sandslurry.design.")) {
      return;
    }
    if (seen.put(object, path) != null) {
      return;
    }
    if (object instanceof Assessment nested && !path.isEmpty()) {
      values.put(path + ".verdict", nested.verdict().toString());
      return;
    }
    Map<String, Field> fields = new TreeMap<>();
    for (Class<?> c = type; c != Object.class && c != Record.class; c = c.getSuperclass()) {
      for (Field field : c.getDeclaredFields()) {
        if (!Modifier.isStatic(field.getModifiers()) && !field.isSynthetic()) {
          fields.put(field.getName(), field);
        }
      }
    }
    fields.forEach(
        (name, field) -> {
          if (!SKIPPED.contains(name)) {
            field.setAccessible(true);
            try {
              value(path.isEmpty() ? name : path + "." + name, field.get(object));
            } catch (IllegalAccessException e) {
              throw new AssertionError(path, e);
            }
          }
        });
  }

  private static <Q extends Quantity<Q>> double si(Quantity<Q> quantity) {
    return quantity.toSystemUnit().getValue().doubleValue();
  }

  private static String number(Number number) {
    if (number instanceof Integer || number instanceof Long) {
      return number.toString();
    }
    double value = number.doubleValue();
    return Double.isFinite(value)
        ? new BigDecimal(value).round(DIGITS).stripTrailingZeros().toString()
        : Double.toString(value);
  }
}
