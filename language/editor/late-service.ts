/** Services that are made when something of them is first used: an editor greets a server long before it asks for anything. */

/**
 * The factory of a service that stands in for the one that `make` makes. Cost: an indirection at each use.
 * @param make called once
 */
export function late<Services, Service extends object>(
  make: (services: Services) => Service,
): (services: Services) => Service {
  return (services) => {
    let made: Service | undefined;
    return new Proxy({} as Service, {
      get(_, property) {
        if (typeof property === "symbol") return undefined; // by which the framework tells groups of services from services
        made ??= make(services);
        const value = Reflect.get(made, property);
        return typeof value === "function" ? value.bind(made) : value;
      },
    });
  };
}
