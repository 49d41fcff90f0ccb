/* A short tour of the window: notes that point at one thing after the other, and can be left at any time. */
#pragma once

#include <gtk/gtk.h>

typedef struct
{
  GtkWidget      *at;    /* what the note points at */
  GtkPositionType side;  /* of it on which the note stands */
  const char     *title; /* translated */
  const char     *text;
} RwTourStop;

/* Starts at the first stop.  Nothing is blocked meanwhile; Escape leaves the tour.  at must live as long as window. */
void rw_tour_start (GtkWidget *window, const RwTourStop *stops, guint count);
