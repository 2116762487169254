package kitstow.planner.trip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kitstow.planner.model.Content;
import kitstow.planner.model.FittedTank;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.SupplyKind;
import kitstow.planner.model.SupplyOrder;

/** Every container aboard, found by the names that orders of use go by. */
final class Stores {
  private final List<Store> all = new ArrayList<>();
  private final Map<String, List<Store>> byName = new HashMap<>();

  private Stores() {}

  static Stores of(Loading loading) {
    Stores stores = new Stores();
    for (FittedTank fitted : loading.rig().tanks().values()) {
      String id = fitted.tank().id();
      stores.add(id, Store.of(loading.indexOf(id + Loading.LIQUID), fitted));
    }
    List<PlacedItem> byUnit = new ArrayList<>(loading.placed().values());
    byUnit.sort(Comparator.comparingInt(PlacedItem::unit));
    for (PlacedItem placed : byUnit) {
      placed.item().content().ifPresent(content -> stores.add(loading, placed, content));
    }
    return stores;
  }

  private void add(Loading loading, PlacedItem placed, Content content) {
    Store store = Store.of(loading.indexOf(placed.key()), placed, content);
    add(placed.item().id(), store);
    if (!placed.key().equals(placed.item().id())) {
      byName.computeIfAbsent(placed.key(), key -> new ArrayList<>()).add(store);
    }
  }

  private void add(String name, Store store) {
    all.add(store);
    byName.computeIfAbsent(name, key -> new ArrayList<>()).add(store);
  }

  List<Store> all() {
    return all;
  }

  /**
   * The containers of a kind, group by group in order of use. Names of nothing aboard and of other
   * kinds are passed over; a container named twice counts where it is named first.
   */
  List<List<Store>> inOrder(SupplyKind kind, List<SupplyOrder> orders) {
    List<List<Store>> groups = new ArrayList<>();
    Set<Store> taken = new HashSet<>();
    for (SupplyOrder order : orders) {
      if (order.kind() != kind) {
        continue;
      }
      for (List<String> names : order.groups()) {
        List<Store> group = new ArrayList<>();
        for (String name : names) {
          for (Store store : byName.getOrDefault(name, List.of())) {
            if (store.kind() == kind && taken.add(store)) {
              group.add(store);
            }
          }
        }
        groups.add(group);
      }
    }
    return groups;
  }
}
