package kitstow.tui.app;

import java.util.EnumMap;
import java.util.Map;
import kitstow.tui.view.Eye;

/**
 * What is looked at.
 *
 * @param sheet the page
 * @param eye from where the load is seen
 * @param zoom steps nearer
 * @param panAcross cells of a tenth of the picture moved across
 * @param panUp cells of a tenth of the picture moved up
 * @param chosen body key of the chosen unit, aboard or at home; "" for none
 * @param stateId state whose figures are shown; "" for the one that decides the answer
 * @param row marked row of a page of rows, first line of a page of text
 * @param left rows marked on other pages when they were left
 */
public record Looking(
    Sheet sheet,
    Eye eye,
    int zoom,
    int panAcross,
    int panUp,
    String chosen,
    String stateId,
    int row,
    Map<Sheet, Integer> left) {
  /** Most steps nearer. */
  public static final int MOST_ZOOM = 6;

  /** How one begins. */
  public static final Looking START =
      new Looking(Sheet.LOAD, Eye.LEFT, 0, 0, 0, "", "", 0, Map.of());

  /** Copies its collections. */
  public Looking {
    left = Map.copyOf(left);
  }

  /** Another page: one of rows as it was left, any other from its beginning. */
  public Looking on(Sheet other) {
    Map<Sheet, Integer> others = new EnumMap<>(Sheet.class);
    others.putAll(left);
    if (sheet.marks()) {
      others.put(sheet, row);
    }
    Integer there = others.remove(other);
    return new Looking(
        other, eye, zoom, panAcross, panUp, chosen, stateId, there == null ? 0 : there, others);
  }

  /** The same from elsewhere. */
  public Looking from(Eye other) {
    return new Looking(sheet, other, zoom, 0, 0, chosen, stateId, row, left);
  }

  /** Nearer or farther; the picture follows the chosen thing again. */
  public Looking zoomed(int by) {
    int to = Math.max(0, Math.min(MOST_ZOOM, zoom + by));
    return new Looking(sheet, eye, to, 0, 0, chosen, stateId, row, left);
  }

  /** The picture moved. */
  public Looking panned(int across, int up) {
    return new Looking(
        sheet, eye, zoom, panAcross + across, panUp + up, chosen, stateId, row, left);
  }

  /** Another thing chosen. */
  public Looking at(String key) {
    return new Looking(sheet, eye, zoom, 0, 0, key, stateId, row, left);
  }

  /** Another state. */
  public Looking in(String state) {
    return new Looking(sheet, eye, zoom, panAcross, panUp, chosen, state, row, left);
  }

  /** Another row. */
  public Looking atRow(int other) {
    return new Looking(
        sheet, eye, zoom, panAcross, panUp, chosen, stateId, Math.max(0, other), left);
  }
}
