package org.holewise.school.roster;

/** What stands on a card. The picture leads to the page that takes the code. */
record PrintedCard(String name, String code, QrPicture picture) {

  /** The code is in the fragment, which a browser keeps to itself: no log of a server has it. */
  static PrintedCard of(Register.NewCard card, String address) {
    String plain = card.code().replace("-", "");
    return new PrintedCard(card.student().name(), card.code(), QrPicture.of(address + "#" + plain));
  }
}
