package kitstow.planner.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.Body;
import kitstow.planner.model.FittedModule;
import kitstow.planner.model.FittedTank;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.Rig;
import kitstow.planner.model.Space;
import kitstow.planner.model.Zone;
import kitstow.planner.packing.Contacts;
import kitstow.planner.rules.Situation;

/**
 * What each body rests on, and with what share. An item rests on other items and on the floor in
 * proportion to contact area; the floor is the body that holds the space: the moving part of a
 * module for what rides on a slide, else the module, the canopy, the tray, or "ute" for the vehicle
 * as a whole. On bare bars it is the same without shares. An item that touches nothing rests on
 * nothing.
 */
final class RestsOn {
  /**
   * One support of a body.
   *
   * @param key body key, or "ute"
   * @param ratio share of the contact, 0 to 1
   */
  record Share(String key, double ratio) {}

  private final Situation situation;
  private final Loading loading;

  RestsOn(Situation situation) {
    this.situation = situation;
    this.loading = situation.loading();
  }

  List<Share> of(Body body) {
    return switch (body.kind()) {
      case ITEM -> item(body);
      case MODULE -> List.of(whole(moduleHost(body)));
      case TANK -> List.of(whole(tankHost(body.id())));
      case LIQUID ->
          List.of(whole(loading.indexOf(body.id()) >= 0 ? body.id() : tankHost(body.id())));
      case CANOPY -> List.of(whole(Rig.TRAY));
      case ACCESSORY -> List.of(whole(accessoryHost(body.id())));
      case TRAY, PART, PERSON, BALL -> List.of(whole(Rig.UTE));
      case UTE -> List.of();
    };
  }

  private static Share whole(String key) {
    return new Share(key, 1.0);
  }

  private List<Share> item(Body body) {
    PlacedItem item = loading.placed().get(body.key());
    if (item == null) {
      throw new IllegalArgumentException("no placed item: " + body.key());
    }
    Space space = item.space();
    String floor = hostKey(space.hostId(), space.movesWith().contains(space.hostId()));
    Optional<Contacts> contacts = situation.contactsOf(item);
    if (!contacts.isPresent()) {
      return List.of(whole(floor));
    }
    List<Share> shares = new ArrayList<>();
    double total = contacts.get().totalMm2();
    if (contacts.get().floorMm2() > 0L) {
      shares.add(new Share(floor, contacts.get().floorMm2() / total));
    }
    for (Contacts.Contact contact : contacts.get().items()) {
      shares.add(new Share(contact.below().key(), contact.areaMm2() / total));
    }
    return shares;
  }

  private String moduleHost(Body body) {
    FittedModule fitted = loading.rig().modules().get(body.id());
    if (fitted == null || !body.key().equals(body.id())) {
      return body.id();
    }
    return hostKey(fitted.bay().hostId(), fitted.bay().moves());
  }

  private String tankHost(String tankId) {
    FittedTank tank = loading.rig().tanks().get(tankId);
    return tank == null ? Rig.UTE : tank.moduleId().orElse(Rig.UTE);
  }

  private String accessoryHost(String id) {
    for (Accessory accessory : loading.scenario().accessories()) {
      if (accessory.id().equals(id)
          && accessory.roof().filter(roof -> roof == Zone.CANOPY_ROOF).isPresent()) {
        return Rig.CANOPY;
      }
    }
    return Rig.UTE;
  }

  private String hostKey(String hostId, boolean moves) {
    Map<String, FittedModule> modules = loading.rig().modules();
    String moving = hostId + Loading.MOVING;
    return modules.containsKey(hostId) && moves && loading.indexOf(moving) >= 0 ? moving : hostId;
  }
}
