#include "json_text.h"

#include <math.h>

#include "table/quantity.h"

void
rw_json_string (GString *out, const char *text)
{
  g_string_append_c (out, '"');
  for (const char *p = text; *p != '\0'; p++)
    switch (*p)
      {
      case '"':
      case '\\':
        g_string_append_c (out, '\\');
        g_string_append_c (out, *p);
        break;
      case '\n':
        g_string_append (out, "\\n");
        break;
      case '\t':
        g_string_append (out, "\\t");
        break;
      default:
        if ((guchar) *p < 0x20)
          g_string_append_printf (out, "\\u%04x", (guint) *p);
        else
          g_string_append_c (out, *p);
      }
  g_string_append_c (out, '"');
}

void
rw_json_number (GString *out, double value)
{
  /* + 0.0 makes 0 of -0, which the library would not read back either. */
  g_autofree char *digits = isfinite (value) ? rw_number_write (value + 0.0) : g_strdup ("null");

  g_string_append (out, digits);
}

static void
append_scalar (GString *out, JsonNode *node)
{
  switch (json_node_get_value_type (node))
    {
    case G_TYPE_STRING:
      rw_json_string (out, json_node_get_string (node));
      break;
    case G_TYPE_BOOLEAN:
      g_string_append (out, json_node_get_boolean (node) ? "true" : "false");
      break;
    case G_TYPE_INT64:
      g_string_append_printf (out, "%" G_GINT64_FORMAT, json_node_get_int (node));
      break;
    default:
      rw_json_number (out, json_node_get_double (node));
    }
}

static void
append_list (GString *out, JsonArray *list)
{
  guint length = json_array_get_length (list);

  g_string_append (out, length > 0 ? "[ " : "[");
  for (guint i = 0; i < length; i++)
    {
      if (i > 0)
        g_string_append (out, ", ");
      rw_json_node (out, json_array_get_element (list, i));
    }
  g_string_append (out, length > 0 ? " ]" : "]");
}

static void
append_object (GString *out, JsonObject *object)
{
  JsonObjectIter iter;
  const char *name;
  JsonNode *value;
  gboolean first = TRUE;

  g_string_append (out, "{");
  json_object_iter_init_ordered (&iter, object);
  while (json_object_iter_next_ordered (&iter, &name, &value))
    {
      g_string_append (out, first ? " " : ", ");
      rw_json_string (out, name);
      g_string_append (out, ": ");
      rw_json_node (out, value);
      first = FALSE;
    }
  g_string_append (out, first ? "}" : " }");
}

void
rw_json_node (GString *out, JsonNode *node)
{
  switch (json_node_get_node_type (node))
    {
    case JSON_NODE_OBJECT:
      append_object (out, json_node_get_object (node));
      break;
    case JSON_NODE_ARRAY:
      append_list (out, json_node_get_array (node));
      break;
    case JSON_NODE_VALUE:
      append_scalar (out, node);
      break;
    case JSON_NODE_NULL:
    default:
      g_string_append (out, "null");
    }
}
