package io.bindprep.repair;

/** Reasons for which no repaired copy is written; there is no other. */
public enum RefusalReason {
    /** The owner's restrictions do not let pages be changed. */
    OWNER,
    /** A change would void a signature. */
    SIGNED,
    /** Pages of the file are lost already, and a copy would hide that. */
    LOST_PAGES,
    /** A page could not be read whole, so nobody knows how far it may move. */
    NOT_READ,
    /** The move asked for takes content off the outer edge. */
    OFF_THE_PAGE,
    /** Content cannot clear the holes within the outer margin and the smallest scale. */
    NO_ROOM,
    /** Something too near cannot be moved by itself, or more than was meant to would move. */
    NOT_ALONE,
    /** Bleed was asked for that cannot be made of what the page paints. */
    NO_BLEED,
    /** The check of the copy still finds content too near. */
    STILL_NEAR,
    /** The check of the copy finds a fault that was not there. */
    NEW_FAULT,
    /** The copy is not whole: pages or objects are missing when it is opened anew. */
    NOT_WHOLE,
    /** There is nothing to split, or a volume goes on no element either. */
    NO_SPLIT
}
