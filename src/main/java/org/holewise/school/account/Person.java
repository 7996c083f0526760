package org.holewise.school.account;

import java.io.Serializable;

/** Somebody with an account, under the name that the school knows them by. */
public record Person(long id, String name, Role role) implements Serializable {}
