package sandslurry.fact;

import java.util.List;
import java.util.Optional;

/**
 * What stands in a field: one text, a value with its range, a group of fields, or a list of groups.
 *
 * @param <S> what is read from it
 */
public abstract sealed class Content<S> permits Type, Span, Part, Listed {
  /** Only the four kinds. */
  Content() {}

  /** Reads what is there and tells what is wrong; groups read on the way are added to a list. */
  abstract Optional<S> read(Place place, Tree value, List<Values> inside);

  /** What is read when the field is absent and has this default. */
  abstract Optional<S> standard(Place place, String text, List<Values> inside);

  /** What is needed, said after "is missing"; may be empty. */
  abstract String wanted();

  /**
   * Treats every kind of content in its own way.
   *
   * @param cases one way for each kind
   * @param <R> what comes of it
   * @return what the way of this kind gives
   */
  public abstract <R> R match(Cases<R> cases);

  /**
   * One way for each kind of content.
   *
   * @param <R> what comes of it
   */
  public interface Cases<R> {
    /**
     * One text.
     *
     * @param type its type
     * @return what comes of it
     */
    R text(Type<?> type);

    /**
     * A value that may have a range.
     *
     * @param span its three texts
     * @return what comes of it
     */
    R span(Span<?> span);

    /**
     * A group of fields.
     *
     * @param fields the fields
     * @return what comes of it
     */
    R group(Fields<?> fields);

    /**
     * A group of one of several kinds.
     *
     * @param kinds the kinds
     * @return what comes of it
     */
    R kinds(Kinds<?> kinds);

    /**
     * A list of groups.
     *
     * @param list the list
     * @return what comes of it
     */
    R list(Listed<?> list);
  }
}
