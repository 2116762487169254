package kitstow.planner.rules;

import java.util.ArrayList;
import java.util.List;
import kitstow.planner.model.PlacedItem;
import kitstow.planner.model.RuleId;
import kitstow.planner.packing.Contacts;

/** Enough of an item's base is supported, with its centre of mass over the supports. */
final class Support implements PlanRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        RuleId.SUPPORT,
        "enough of a base is supported, with its centre over the supports",
        "supportRatio 0.8",
        /* overridable= */ false);
  }

  @Override
  public List<Breach> breaches(Situation situation) {
    List<Breach> breaches = new ArrayList<>();
    int least = situation.settings().supportPermille();
    for (List<Contacts> space : situation.contactsBySpace().values()) {
      for (Contacts contacts : space) {
        if (!contacts.supported(least)) {
          PlacedItem item = contacts.item();
          breaches.add(
              new Breach(
                  RuleId.SUPPORT,
                  List.of(item.key()),
                  "",
                  contacts.supportedPermille() / 10.0,
                  least / 10.0,
                  "%",
                  Names.placed(situation.loading(), item)
                      + " has "
                      + contacts.supportedPermille() / 10
                      + " % of its base supported"
                      + (contacts.centreHeld() ? "" : " and its centre is not over the supports"),
                  "stand it on the floor or wholly on what is below it"));
        }
      }
    }
    return breaches;
  }
}
