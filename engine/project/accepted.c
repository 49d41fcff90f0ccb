#include "accepted.h"

#include <string.h>

static void
acceptance_free (RwAcceptance *item)
{
  g_free (item->rule);
  g_free (item->about);
  g_free (item->date);
  g_free (item->reason);
  g_free (item);
}

RwAccepted *
rw_accepted_new (void)
{
  RwAccepted *accepted = g_new (RwAccepted, 1);

  accepted->items = g_ptr_array_new_with_free_func ((GDestroyNotify) acceptance_free);
  return accepted;
}

RwAccepted *
rw_accepted_copy (const RwAccepted *accepted)
{
  RwAccepted *copy = rw_accepted_new ();

  for (guint i = 0; i < accepted->items->len; i++)
    {
      const RwAcceptance *item = g_ptr_array_index (accepted->items, i);

      rw_accepted_add (copy, item->rule, item->about, item->severity, item->date, item->reason);
    }
  return copy;
}

void
rw_accepted_free (RwAccepted *accepted)
{
  if (accepted == NULL)
    return;
  g_ptr_array_unref (accepted->items);
  g_free (accepted);
}

static gboolean
same (const RwAcceptance *a, const RwAcceptance *b)
{
  return strcmp (a->rule, b->rule) == 0 && strcmp (a->about, b->about) == 0 && a->severity == b->severity
         && strcmp (a->date, b->date) == 0 && strcmp (a->reason, b->reason) == 0;
}

gboolean
rw_accepted_equal (const RwAccepted *a, const RwAccepted *b)
{
  if (a->items->len != b->items->len)
    return FALSE;
  for (guint i = 0; i < a->items->len; i++)
    if (!same (g_ptr_array_index (a->items, i), g_ptr_array_index (b->items, i)))
      return FALSE;
  return TRUE;
}

static RwAcceptance *
find (const RwAccepted *accepted, const char *rule, const char *about)
{
  for (guint i = 0; i < accepted->items->len; i++)
    {
      RwAcceptance *item = g_ptr_array_index (accepted->items, i);

      if (strcmp (item->rule, rule) == 0 && strcmp (item->about, about) == 0)
        return item;
    }
  return NULL;
}

const RwAcceptance *
rw_accepted_find (const RwAccepted *accepted, const char *rule, const char *about)
{
  return find (accepted, rule, about);
}

void
rw_accepted_add (RwAccepted *accepted,
                 const char *rule,
                 const char *about,
                 int         severity,
                 const char *date,
                 const char *reason)
{
  RwAcceptance *item = find (accepted, rule, about);

  if (item == NULL)
    {
      item = g_new0 (RwAcceptance, 1);
      item->rule = g_strdup (rule);
      item->about = g_strdup (about);
      g_ptr_array_add (accepted->items, item);
    }
  item->severity = severity;
  g_free (item->date);
  item->date = g_strdup (date != NULL ? date : "");
  g_free (item->reason);
  item->reason = g_strdup (reason != NULL ? reason : "");
}

gboolean
rw_accepted_remove (RwAccepted *accepted, const char *rule, const char *about)
{
  RwAcceptance *item = find (accepted, rule, about);

  return item != NULL && g_ptr_array_remove (accepted->items, item);
}
