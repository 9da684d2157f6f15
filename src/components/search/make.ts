/** Makes an element with attributes and children. */
export const make = <Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes: { readonly [name: string]: string } = {},
  ...children: (Node | string)[]
): HTMLElementTagNameMap[Name] => {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  element.append(...children);
  return element;
};
