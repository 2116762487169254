package kitstow.planner.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.RuleId;

/**
 * What each item carries on top, in every state. An item hands its own mass and all it carries to
 * what it rests on, in proportion to the area of contact. Each item asks those above it, down from
 * the top, and remembers the answer.
 */
final class BearingAudit {
  private final LoadState state;
  private final Map<String, List<Handed>> handedTo;
  private final Map<String, Double> carriedG = new HashMap<>();

  private BearingAudit(LoadState state, Map<String, List<Handed>> handedTo) {
    this.state = state;
    this.handedTo = handedTo;
  }

  static void judge(AuditCase audited, Findings findings) {
    Map<String, List<Handed>> handedTo = handedTo(audited);
    for (LoadState state : audited.states()) {
      BearingAudit bearing = new BearingAudit(state, handedTo);
      for (AuditedItem item : audited.items()) {
        // What may carry nothing at all is a matter of the column above it.
        if (item.item().bearsG() > 0L && !item.onBareBars()) {
          findings.sharedLimit(
              RuleId.BEARING, item.key(), state.id(), bearing.carriedG(item), item.item().bearsG());
        }
      }
    }
  }

  private double carriedG(AuditedItem item) {
    Double known = carriedG.get(item.key());
    if (known != null) {
      return known;
    }
    double sumG = 0.0;
    for (Handed handed : handedTo.getOrDefault(item.key(), List.of())) {
      double aboveG = state.massG(handed.from().body()) + carriedG(handed.from());
      sumG += aboveG * handed.areaMm2() / handed.fromAllMm2();
    }
    carriedG.put(item.key(), sumG);
    return sumG;
  }

  /** Who hands what part of its load to an item, by the key of that item. */
  private static Map<String, List<Handed>> handedTo(AuditCase audited) {
    Map<String, List<Handed>> handedTo = new HashMap<>();
    for (AuditedItem item : audited.items()) {
      List<Contact> contacts = Contact.beneath(item, audited.withIts(item));
      long allMm2 = Contact.areaMm2(contacts);
      for (Contact contact : contacts) {
        if (contact.below().isPresent()) {
          handedTo
              .computeIfAbsent(contact.below().get().key(), key -> new ArrayList<>())
              .add(new Handed(item, contact.areaMm2(), allMm2));
        }
      }
    }
    return handedTo;
  }

  /** The part of an item's load that rests on an area out of all its areas. */
  private record Handed(AuditedItem from, long areaMm2, long fromAllMm2) {}
}
