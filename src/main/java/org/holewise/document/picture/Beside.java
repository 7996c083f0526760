package org.holewise.document.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.holewise.document.picture.Assembly.Seated;
import org.holewise.document.picture.BoardPicture.Body;
import org.holewise.document.picture.BoardPicture.Lead;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.PartValue;

/** Batteries and other things beside the board: a labelled box each, with wires to its holes. */
final class Beside {
  private static final double WIDTH = 78;
  private static final double HEIGHT = 42;
  private static final double GAP = 8;
  private static final double WIRES = 30;

  private final Plan plan;
  private final List<Item> items = new ArrayList<>();

  private record Item(Part part, List<Seated> leads, double across) {}

  Beside(Plan plan) {
    this.plan = plan;
  }

  /** How far into the drawing the board begins where there is something beside it (px). */
  static double room(View view) {
    return (view == View.ALONG ? WIDTH : HEIGHT) + WIRES + 2;
  }

  void add(Part part, List<Seated> leads) {
    var sorted = leads.stream().sorted(Comparator.comparingDouble(this::across)).toList();
    double across = leads.stream().mapToDouble(this::across).average().orElse(0);
    items.add(new Item(part, sorted, across));
  }

  private double across(Seated lead) {
    return plan.view() == View.ALONG ? lead.at().y() : lead.at().x();
  }

  List<Body> draw(Labels labels, List<Lead> leads) {
    var bodies = new ArrayList<Body>();
    boolean along = plan.view() == View.ALONG;
    double size = along ? HEIGHT : WIDTH;
    double end = along ? plan.frame().height() : plan.frame().width();
    items.sort(Comparator.comparingDouble(Item::across));
    double free = 1;
    for (int i = 0; i < items.size(); i++) {
      double after = (items.size() - i) * (size + GAP) - GAP;
      double from = Math.min(end - 1 - after, Math.max(free, items.get(i).across() - size / 2));
      free = from + size + GAP;
      Box box = along ? new Box(1, from, WIDTH, HEIGHT) : new Box(from, 1, WIDTH, HEIGHT);
      bodies.add(box(items.get(i), box, labels));
      wires(items.get(i), box, labels, leads);
    }
    return bodies;
  }

  private Body box(Item item, Box box, Labels labels) {
    Pen pen = Pen.at(box.centre(), new Spot(0, 0), new Spot(1, 0));
    String outline = pen.rectangle(box.width() / 2, box.height() / 2, 4).path();
    boolean along = plan.view() == View.ALONG;
    String ref = item.part().ref();
    String value = PartValue.of(item.part());
    Spot name = box.centre().plus(along ? -13 : 0, -9);
    if (!along || value.isEmpty()) {
      labels.fix((ref + " " + value).strip(), "name", along ? name.plus(0, 9) : name);
    } else {
      labels.fix(ref, "name", name);
      labels.fix(value, "value", name.plus(0, 18));
    }
    return new Body(item.part().ref(), item.part().kind().name(), outline, "", box);
  }

  private void wires(Item item, Box box, Labels labels, List<Lead> leads) {
    boolean along = plan.view() == View.ALONG;
    int n = item.leads().size();
    double side = along ? box.height() : box.width();
    for (int i = 0; i < n; i++) {
      Seated lead = item.leads().get(i);
      double offset = side * (i + 0.5) / n;
      Spot from =
          along
              ? new Spot(box.x() + box.width(), box.y() + offset)
              : new Spot(box.x() + offset, box.y() + box.height());
      String name = lead.pin().name().replace('-', '−');
      labels.fix(name, "terminal", along ? from.plus(-9, 0) : from.plus(0, -10));
      leads.add(new Lead(lead.pin(), lead.hole(), lead.at(), style(name), path(from, lead.at())));
    }
  }

  private static String style(String pin) {
    return pin.equals("+") ? "wire plus" : pin.equals("−") ? "wire minus" : "wire";
  }

  private String path(Spot from, Spot to) {
    boolean along = plan.view() == View.ALONG;
    double far = along ? to.x() - from.x() : to.y() - from.y();
    double out = Math.min(WIRES, far / 2);
    double in = Math.max(far * 0.6, 20);
    Pen pen = Pen.plain().move(from.x(), from.y());
    return along
        ? pen.curve(from.x() + out, from.y(), to.x() - in, to.y(), to.x(), to.y()).path()
        : pen.curve(from.x(), from.y() + out, to.x(), to.y() - in, to.x(), to.y()).path();
  }
}
