#include "backwards_words.h"

#include <glib/gi18n.h>
#include <math.h>

#include "base/words.h"
#include "making/backwards.h"

/* "Worked backwards from 3.10 mm ..."; new. */
static char *
say (const RwBackwards *b, RwStyle style)
{
  g_autofree char *measured = rw_number_words (b->measured, "mm", style);
  g_autofree char *label = rw_slot_words (b->slot);
  g_autofree char *angle = rw_number_words (b->angle, "deg", style);
  g_autofree char *wanted = rw_number_words (b->wanted_angle, "deg", style);
  g_autofree char *bridge = rw_number_words (b->wanted_bridge, "mm", style);
  g_autofree char *shim = rw_number_words (fabs (b->shim), "mm", style);

  return g_strdup_printf (b->shim >= 0
                            ? _("Worked backwards from %s (%s): the neck stands at %s, and %s is wanted. A bridge of %s "
                                "sets it right, or a shim of %s at the head end of the heel.")
                            : _("Worked backwards from %s (%s): the neck stands at %s, and %s is wanted. A bridge of %s "
                                "sets it right, or a shim of %s at the cap end of the heel."),
                          measured, label, angle, wanted, bridge, shim);
}

char *
rw_backwards_words (RwDocument *document)
{
  RwBackwards backwards;

  return rw_backwards (rw_document_project (document), &backwards) ? say (&backwards, rw_document_style (document))
                                                                   : NULL;
}
